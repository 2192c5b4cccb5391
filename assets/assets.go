// Package assets holds the files that go into the programs: the typeface in
// which the window and its pictures are set.
//
// The typeface is IBM Plex Sans under the SIL Open Font License 1.1, whose text
// stands beside the files in fonts/OFL.txt. Its figures are all 600 units wide
// in every weight, so columns of figures stand without further care.
package assets

import _ "embed"

var (
	// Regular is IBM Plex Sans 400, a TrueType file: text.
	//
	//go:embed fonts/IBMPlexSans_400Regular.ttf
	Regular []byte

	// Italic is IBM Plex Sans 400 italic, a TrueType file: names of ground
	// features on maps.
	//
	//go:embed fonts/IBMPlexSans_400Regular_Italic.ttf
	Italic []byte

	// Medium is IBM Plex Sans 500, a TrueType file: buttons and names.
	//
	//go:embed fonts/IBMPlexSans_500Medium.ttf
	Medium []byte

	// SemiBold is IBM Plex Sans 600, a TrueType file: headings and the figures
	// that matter.
	//
	//go:embed fonts/IBMPlexSans_600SemiBold.ttf
	SemiBold []byte

	// Bold is IBM Plex Sans 700, a TrueType file: the letters of lids.
	//
	//go:embed fonts/IBMPlexSans_700Bold.ttf
	Bold []byte
)
