package practice

// Sources cited more than once.
const (
	collins2004     = "Collins 2004, Ann Entomol Soc Am 97:140-146"
	chuda2015       = "Chuda-Mickiewicz & Samborski 2015, Acta Sci Pol Zootechnica 14(4):25-32"
	milum1930       = "Milum 1930, J Econ Entomol 23:441 (Wisconsin, 1924-25)"
	buechler2013    = "Büchler et al 2013, J Apic Res 52(1), standard methods for rearing queens"
	perezSato2006   = "Perez-Sato & Ratnieks 2006, Apidologie 37:571"
	perezSato2008   = "Perez-Sato, Hughes, Couvillon & Ratnieks 2008, Apidologie 39:708"
	fellMorse1984   = "Fell & Morse 1984, Insectes Soc"
	noSource        = "no source found"
	breedersTable   = "breeders' printed rearing tables, which differ by a day or two"
	schoolSlides    = "slides of a beekeeping course, ± 1 d"
	partonLogan1981 = "Parton & Logan 1981, Agric Meteorol 23:205-216 (air at 150 cm)"
)

// casteRows are the timetables of the three castes.
var casteRows = []Number{
	{
		Key: QueenHatches, Name: "queen_hatches", Title: "Egg to hatching, queen", Unit: Hour,
		Default: 72, Min: 65, Max: 93, Source: collins2004, Confidence: Verified, Used: "the stage of a cell",
	},
	{
		Key: QueenCapped, Name: "queen_capped", Title: "Egg to capped cell, queen", Unit: Hour,
		Default: 192, Min: 180, Max: 216, Source: schoolSlides + "; 7.5 to 9 d printed", Confidence: Taught,
		Used: "the stage of a cell, and from when warmth moves its clock",
	},
	{
		Key: QueenEmerges, Name: "queen_emerges", Title: "Egg to emergence", Unit: Hour,
		Default: 385, Min: 360, Max: 412, Source: chuda2015 + ": 16 d 1 h at 34.5 °C; about 360 h in a breeders' leaflet",
		Confidence: Verified, Front: true, Used: "every hard deadline",
	},
	{
		Key: WorkerHatches, Name: "worker_hatches", Title: "Egg to hatching, worker", Unit: Hour,
		Default: 72, Min: 65, Max: 93, Source: collins2004, Confidence: Verified, Used: "the age of brood",
	},
	{
		Key: WorkerCapped, Name: "worker_capped", Title: "Egg to capped brood, worker", Unit: Hour,
		Default: 204, Min: 192, Max: 264, Source: milum1930 + ": most between day 8 and 9", Confidence: Verified,
		Used: "the age of brood",
	},
	{
		Key: WorkerEmerges, Name: "worker_emerges", Title: "Egg to emergence, worker", Unit: Hour,
		Default: 492, Min: 478, Max: 576, Source: milum1930 + ": mean about 20.5 d", Confidence: Verified,
		Used: "when brood turns to bees, when a queenless nuc has no brood left",
	},
	{
		Key: DroneHatches, Name: "drone_hatches", Title: "Egg to hatching, drone", Unit: Hour,
		Default: 72, Min: 65, Max: 93, Source: collins2004 + " (female eggs)", Confidence: Derived, Used: "the age of drone brood",
	},
	{
		Key: DroneCapped, Name: "drone_capped", Title: "Egg to capped brood, drone", Unit: Hour,
		Default: 240, Min: 216, Max: 264, Source: schoolSlides, Confidence: Taught, Used: "the age of drone brood",
	},
	{
		Key: DroneEmerges, Name: "drone_emerges", Title: "Egg to emergence, drone", Unit: Hour,
		Default: 576, Min: 552, Max: 600, Source: schoolSlides, Confidence: Taught, Used: "when drones are there",
	},
	{
		Key: DroneRipe, Name: "drone_ripe", Title: "Egg to ripe drone", Unit: Day,
		Default: 40, Min: 36, Max: 44, Source: buechler2013, Confidence: Verified, Used: "when drones can mate",
	},
	{
		Key: DroneBestUntil, Name: "drone_best_until", Title: "Drone best until, age", Unit: Day,
		Default: 28, Min: 21, Max: 35, Source: "Rhodes 2002, NSW Agriculture DAI/112", Confidence: Verified, Used: "how long drones serve",
	},
	{
		Key: DronesFrom, Name: "drones_from", Title: "Ripe drones without a comb hung in, before the longest day from", Unit: Day,
		Default: 60, Min: 20, Max: 150, Source: "late April in the north; " + noSource, Confidence: CommonPractice, Used: "plan of a batch, last graft that makes sense",
	},
	{
		Key: DronesUntil, Name: "drones_until", Title: "Drones are thrown out, after the longest day from", Unit: Day,
		Default: 70, Min: 20, Max: 150, Source: "thrown out from late August on in keepers' pages of Britain and the north of America; later where forage lasts and colonies have no queen, sooner in dearth (a teaching page)",
		Confidence: Taught, Used: "plan of a batch, last graft that makes sense",
	},
	{
		Key: DronesThrownOut, Name: "drones_thrown_out", Title: "Until the last drones are thrown out", Unit: Day,
		Default: 14, Min: 1, Max: 60, Source: "it can take a few weeks to remove all drones from a colony (a teaching page); the days are ours",
		Confidence: Taught, Used: "plan of a batch, last graft that makes sense",
	},
	{
		Key: BroodWarmth, Name: "brood_warmth", Title: "Warmth the clock is given for", Unit: Celsius,
		Default: 34.5, Min: 34, Max: 35, Source: chuda2015 + "; nest 33 to 36 °C, Petz et al 2004", Confidence: Verified,
		Used: "the clock of cells in an incubator",
	},
	{
		Key: HoursPerDegree, Name: "hours_per_degree", Title: "Later for each degree below", Unit: HourPerDegree,
		Default: 10.8, Min: 8, Max: 12, Source: "27 h later for 2.5 °C less, two points only: " + chuda2015, Confidence: Derived,
		Used: "the clock of cells in an incubator",
	},
	{
		Key: WarmthLeast, Name: "warmth_least", Title: "Coolest the clock can reckon with", Unit: Celsius,
		Default: 32, Min: 30, Max: 34, Source: chuda2015, Confidence: Verified, Used: "the clock of cells in an incubator",
	},
	{
		Key: WarmthMost, Name: "warmth_most", Title: "Warmest the clock can reckon with", Unit: Celsius,
		Default: 35, Min: 34.5, Max: 36, Source: "half a degree past " + chuda2015, Confidence: Derived, Used: "the clock of cells in an incubator",
	},
	{
		Key: LastResortWarmth, Name: "last_resort_warmth", Title: "Warmth that holds cells back", Unit: Celsius,
		Default: 32, Min: 32, Max: 34, Source: chuda2015 + ": 27 h later, no harm seen; one study", Confidence: Verified,
		Used: "the late day",
	},
}
