package scene

// Camera says how a world is looked at: Screen(w) = w × Scale + Shift. The zero
// Camera, like one of scale 1, shows the world as it is. Cameras are values; the
// methods that move one return the moved one.
type Camera struct {
	Scale float64 // dp for one unit of the world; 0 stands for 1
	Shift Point   // where the world's origin lies on the screen, dp
}

// scale returns the dp for one unit of the world.
func (c Camera) scale() float64 {
	if c.Scale == 0 {
		return 1
	}
	return c.Scale
}

// Screen returns where the point w of the world is seen.
func (c Camera) Screen(w Point) Point { return w.Mul(c.scale()).Add(c.Shift) }

// World returns the point of the world that is seen at p. It undoes Screen.
func (c Camera) World(p Point) Point { return p.Sub(c.Shift).Mul(1 / c.scale()) }

// Length returns how long the length l of the world looks, in dp.
func (c Camera) Length(l float64) float64 { return l * c.scale() }

// ScreenArea returns where the area a of the world is seen.
func (c Camera) ScreenArea(a Area) Area {
	p := c.Screen(Point{a.X, a.Y})
	return Area{p.X, p.Y, c.Length(a.W), c.Length(a.H)}
}

// WorldArea returns the part of the world that is seen in a.
func (c Camera) WorldArea(a Area) Area {
	p := c.World(Point{a.X, a.Y})
	return Area{p.X, p.Y, a.W / c.scale(), a.H / c.scale()}
}

// Zoom returns c brought nearer by factor, which must be above zero, about the
// point p of the screen: what is seen at p stays there.
func (c Camera) Zoom(p Point, factor float64) Camera {
	return Camera{c.scale() * factor, p.Add(c.Shift.Sub(p).Mul(factor))}
}

// Pan returns c with everything seen d further on the screen.
func (c Camera) Pan(d Point) Camera { return Camera{c.scale(), c.Shift.Add(d)} }

// Then returns the camera that shows through outer what c shows.
func (c Camera) Then(outer Camera) Camera {
	return Camera{c.scale() * outer.scale(), outer.Screen(c.Shift)}
}

// Fit returns the camera that shows all of world, centred and as large as goes,
// in the area of the screen. An empty world is shown at scale 1.
func Fit(world, screen Area) Camera {
	k := 1.0
	if !world.Empty() && !screen.Empty() {
		k = min(screen.W/world.W, screen.H/world.H)
	}
	return Camera{k, screen.Centre().Sub(world.Centre().Mul(k))}
}
