package paint

import "lidmark/ui/scene"

// lightSheet holds the light theme's colours of sheet, text, signs and maps.
var lightSheet = map[scene.Role]uint32{
	scene.Ground:    0xF6F7F4,
	scene.Panel:     0xFFFFFF,
	scene.Sunk:      0xECEFEA,
	scene.Map:       0xEEF2EA,
	scene.Ink:       0x161D21,
	scene.Ink2:      0x465056,
	scene.Ink3:      0x5F6A70,
	scene.Rule:      0xC3CAC5,
	scene.Hair:      0xDEE3DE,
	scene.Pen:       0x00598C,
	scene.PenTint:   0xDCEBF5,
	scene.Act:       0xB64200,
	scene.ActTint:   0xFBE6D9,
	scene.Paper:     0xFFFFFF,
	scene.Off:       0xE4E8E3,
	scene.Water:     0x9CC4DD,
	scene.WaterLine: 0x357098,
	scene.Hedge:     0x728E6C,
	scene.Tree:      0xC9D8C0,
	scene.TreeLine:  0x6F8A68,
	scene.Shadow:    0xD5DDD2,
	scene.Track:     0x8A7F70,
	scene.Contour:   0xCFC6B4,
	scene.Good:      0x007857,
	scene.GoodTint:  0xDDF0E8,
	scene.Bar:       0x7B8D96,
	scene.BarLight:  0xC9D2D6,
}

// lightConditions holds fill, line and letter of each condition. Fills are the
// colours of Okabe and Ito (2008, Color Universal Design) or their tints.
var lightConditions = map[scene.Condition][3]uint32{
	scene.Empty:         {0, 0x77828A, 0x5F6A70},
	scene.NoQueen:       {0xFFFFFF, 0x161D21, 0x161D21},
	scene.Cell:          {0xEBCBDD, 0x9B4878, 0x161D21},
	scene.Virgin:        {0x89CBF0, 0x1A6FA6, 0x161D21},
	scene.Due:           {0xE69F00, 0x9A6500, 0x161D21},
	scene.Laying:        {0x009E73, 0x007A59, 0x0B1013},
	scene.GoodBrood:     {0x00543D, 0x00543D, 0xFFFFFF},
	scene.DroneLayer:    {0xD55E00, 0xB84300, 0x0B1013},
	scene.LayingWorkers: {0xD55E00, 0xB84300, 0x0B1013},
	scene.Robbed:        {0xD55E00, 0xB84300, 0x0B1013},
	scene.Mated:         {0xBDE3D4, 0x007A59, 0x161D21},
}

// darkSheet holds the dark theme's colours of sheet, text, signs and maps.
var darkSheet = map[scene.Role]uint32{
	scene.Ground:    0x14181A,
	scene.Panel:     0x1A1F22,
	scene.Sunk:      0x20272A,
	scene.Map:       0x182120,
	scene.Ink:       0xE9ECE8,
	scene.Ink2:      0xB9C1C2,
	scene.Ink3:      0x96A0A3,
	scene.Rule:      0x3D474B,
	scene.Hair:      0x2B3337,
	scene.Pen:       0x7CC4F0,
	scene.PenTint:   0x1D3446,
	scene.Act:       0xFF9A5C,
	scene.ActTint:   0x45281A,
	scene.Paper:     0x14181A,
	scene.Off:       0x23292C,
	scene.Water:     0x2B5870,
	scene.WaterLine: 0x5F9DC2,
	scene.Hedge:     0x5A7656,
	scene.Tree:      0x27382B,
	scene.TreeLine:  0x5E7A5B,
	scene.Shadow:    0x101617,
	scene.Track:     0x85796A,
	scene.Contour:   0x3B3A33,
	scene.Good:      0x3CC79B,
	scene.GoodTint:  0x17362C,
	scene.Bar:       0x7D8E96,
	scene.BarLight:  0x46535A,
}

// darkConditions holds fill, line and letter of each condition. Fills are the
// colours of Okabe and Ito (2008, Color Universal Design) or their tints.
var darkConditions = map[scene.Condition][3]uint32{
	scene.Empty:         {0, 0x7C888C, 0x96A0A3},
	scene.NoQueen:       {0x14181A, 0xE9ECE8, 0xE9ECE8},
	scene.Cell:          {0x6E3F5A, 0xC988AC, 0xF6ECF2},
	scene.Virgin:        {0x2A6C9A, 0x62ADDF, 0xFFFFFF},
	scene.Due:           {0xF2BE45, 0xF2BE45, 0x0B1013},
	scene.Laying:        {0x2BA882, 0x35BF93, 0x0B1013},
	scene.GoodBrood:     {0xBDF2DF, 0xBDF2DF, 0x0B1013},
	scene.DroneLayer:    {0xEC6420, 0xFF9A5C, 0x0B1013},
	scene.LayingWorkers: {0xEC6420, 0xFF9A5C, 0x0B1013},
	scene.Robbed:        {0xEC6420, 0xFF9A5C, 0x0B1013},
	scene.Mated:         {0x1F5A49, 0x35BF93, 0xFFFFFF},
}

// paints holds the colours of paint and front marks, the same in every theme.
var paints = map[scene.Role]uint32{
	scene.White:  0xFFFFFF,
	scene.Yellow: 0xF0E442,
	scene.Red:    0xC9302C,
	scene.Green:  0x009E73,
	scene.Blue:   0x0072B2,
	scene.Sky:    0x56B4E9,
	scene.Black:  0x161D21,
	scene.Orange: 0xD55E00,
}
