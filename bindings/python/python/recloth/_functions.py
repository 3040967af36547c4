# Written by `cargo xtask generate` from the doc comments of the core; do not edit.
"""Every function of the core, with names, defaults and named results."""

from collections import namedtuple
from enum import IntEnum

from . import _call, _core, _numbers

_new = tuple.__new__


class BandMake(IntEnum):
    """How a straight band gets its two layers."""

    #: One strip folded along its upper edge.
    FOLDED = 0
    #: Two strips, an outer and an inner, joined along the upper edge.
    FACED = 1


BandMake.__module__ = "recloth"


class Basis(IntEnum):
    """How plant matter is when it is weighed."""

    #: Fresh, or frozen fresh: with its water.
    FRESH = 0
    #: Dried.
    DRY = 1


Basis.__module__ = "recloth"


class Bath(IntEnum):
    """The bath a part is to go through."""

    #: Water, with or without a mild detergent.
    WATER = 0
    #: Chlorine bleach (sodium hypochlorite).
    CHLORINE_BLEACH = 1
    #: A direct dye.
    DIRECT = 2
    #: A reactive dye.
    REACTIVE = 3
    #: An acid dye.
    ACID = 4
    #: A vat dye, indigo included.
    VAT = 5
    #: A sulphur dye.
    SULPHUR = 6
    #: An azoic dye.
    AZOIC = 7
    #: A metal-complex dye.
    METAL_COMPLEX = 8
    #: A disperse dye.
    DISPERSE = 9
    #: A basic dye.
    BASIC = 10
    #: A natural dye on a mordant.
    NATURAL = 11


Bath.__module__ = "recloth"


class BindingFold(IntEnum):
    """How a binding is folded over an edge."""

    #: One layer: both long edges are turned in.
    SINGLE = 0
    #: Two layers, French binding: the strip is folded along its middle, both raw edges sewn in one seam.
    DOUBLE = 1


BindingFold.__module__ = "recloth"


class ButtonShape(IntEnum):
    """The shape of a button."""

    #: A disc: the loop goes over both faces.
    FLAT = 0
    #: A ball: the loop goes over its greatest circle.
    BALL = 1


ButtonShape.__module__ = "recloth"


class EasePlace(IntEnum):
    """Where on a garment of woven cloth the ease is asked."""

    #: The bust of a bodice or a dress.
    BUST = 0
    #: The waist of a dress or a bodice.
    DRESS_WAIST = 1
    #: The waist of a skirt or of trousers, which holds them up.
    SKIRT_WAIST = 2
    #: The hip of any garment.
    HIP = 3
    #: The chest of a man's shirt, from fitted to classic.
    SHIRT_CHEST = 4


EasePlace.__module__ = "recloth"


class EdgeCurve(IntEnum):
    """Which way an edge curves, seen from the cloth."""

    #: Into the cloth: a neck, an armhole.
    INWARD = 0
    #: Out of the cloth: a rounded corner, a scallop.
    OUTWARD = 1


EdgeCurve.__module__ = "recloth"


class Fibre(IntEnum):
    """What a cloth, thread or trim is made of. A blend counts as its most delicate part: ask for each."""

    #: Not known, or only guessed.
    UNKNOWN = 0
    #: Cotton.
    COTTON = 1
    #: Linen.
    LINEN = 2
    #: Viscose and its kin.
    VISCOSE = 3
    #: Polyester.
    POLYESTER = 4
    #: Acrylic.
    ACRYLIC = 5
    #: Polyamide (nylon).
    POLYAMIDE = 6
    #: Acetate and triacetate.
    ACETATE = 7
    #: Elastane (spandex).
    ELASTANE = 8
    #: Rubber, and elastic of any kind.
    RUBBER = 9
    #: Wool.
    WOOL = 10
    #: Silk.
    SILK = 11
    #: Mohair and other hair.
    MOHAIR = 12
    #: Leather and fur.
    LEATHER = 13


Fibre.__module__ = "recloth"


class Finish(IntEnum):
    """What was done to a cloth that a bath might undo."""

    #: Not known.
    UNKNOWN = 0
    #: Known to have no finish, and its colour is fast, or it has none.
    PLAIN = 1
    #: Its colour is not fast.
    NOT_FAST = 2
    #: A flame-retardant finish.
    FLAME_RETARDANT = 3
    #: A resin finish, such as against creases.
    RESIN = 4


Finish.__module__ = "recloth"


class InBath(IntEnum):
    """What else is in a bath, or was and has not been rinsed out of the goods and the vessel."""

    #: Not known.
    UNKNOWN = 0
    #: Water and nothing else.
    WATER_ONLY = 1
    #: An acid: vinegar, descaler, cleaners for toilets, drains or rust, a dishwasher's rinse.
    ACID = 2
    #: Ammonia, many glass cleaners, urine.
    AMMONIA = 3
    #: Alcohol, spirit, sanitiser.
    ALCOHOL = 4
    #: Peroxide or another oxygen bleach.
    PEROXIDE = 5
    #: Thiosulfate, sulfite or another neutraliser.
    NEUTRALISER = 6
    #: Anything else: detergent, dye, mordant.
    OTHER = 7


InBath.__module__ = "recloth"


class InsertPlace(IntEnum):
    """Where a strip is let in."""

    #: A seam that is opened: its edges have their allowances.
    SEAM = 0
    #: A cut through the cloth: its edges lose theirs to the new seams.
    SLASH = 1


InsertPlace.__module__ = "recloth"


class Reaction(IntEnum):
    """What takes the last chlorine away, and what it turns into: the same salt has more than one answer."""

    #: Sodium thiosulfate crystals (pentahydrate) to tetrathionate: the safe upper figure.
    THIOSULFATE_TO_TETRATHIONATE = 0
    #: Sodium thiosulfate crystals (pentahydrate) to sulfate and sulfur.
    THIOSULFATE_TO_SULFUR = 1
    #: Sodium thiosulfate crystals (pentahydrate) to sulfate.
    THIOSULFATE_TO_SULFATE = 2
    #: Sodium bisulfite to sulfate.
    BISULFITE = 3
    #: Sodium metabisulfite to sulfate.
    METABISULFITE = 4
    #: Sodium sulfite to sulfate.
    SULFITE = 5
    #: Ascorbic acid (vitamin C).
    ASCORBIC_ACID = 6
    #: Hydrogen peroxide, to oxygen: it froths.
    PEROXIDE = 7


Reaction.__module__ = "recloth"


class Rounding(IntEnum):
    """Which graduation a length is rounded to."""

    #: The nearer graduation; from the middle, the one further from zero.
    NEAREST = 0
    #: The next graduation that is not less.
    UP = 1
    #: The next graduation that is not more.
    DOWN = 2


Rounding.__module__ = "recloth"


class SquareEnds(IntEnum):
    """Which ends of a band in sections are cut square to the lower edge."""

    #: Neither end: the band closes in a ring, or both ends slant.
    NEITHER = 0
    #: The first section's free end.
    FIRST = 1
    #: The last section's free end.
    LAST = 2
    #: Both free ends.
    BOTH = 3


SquareEnds.__module__ = "recloth"


class Stage(IntEnum):
    """How far the goods are from the bleach."""

    #: Still in the bleach.
    IN_BLEACH = 0
    #: Out of it and drained, not rinsed.
    DRAINED = 1
    #: Drained and rinsed, in a fresh bath.
    FRESH_BATH = 2


Stage.__module__ = "recloth"


class StitchType(IntEnum):
    """Stitch types whose thread is known from their path, numbered as in ISO 4915."""

    #: Type 101, single-thread chain stitch.
    CHAIN_SINGLE = 0
    #: Type 301, plain lockstitch.
    LOCK = 1
    #: Type 401, two-thread chain stitch.
    CHAIN_DOUBLE = 2


StitchType.__module__ = "recloth"


class Style(IntEnum):
    """How a length is printed."""

    #: Millimetres with every digit: reading it gives the same number, to the last bit.
    EXACT = 0
    #: Whole millimetres: `797 mm`.
    MM = 1
    #: Half millimetres: `58.5 mm`.
    MM_HALF = 2
    #: Centimetres to the millimetre: `58.4 cm`.
    CM = 3
    #: Centimetres to the millimetre with a decimal comma: `58,4 cm`.
    CM_COMMA = 4
    #: Metres to the centimetre: `1.20 m`.
    METRE = 5
    #: Metres to the centimetre with a decimal comma: `1,20 m`.
    METRE_COMMA = 6
    #: Inches and halves: `31 1/2 in`.
    INCH_HALF = 7
    #: Inches and quarters: `31 1/4 in`.
    INCH_QUARTER = 8
    #: Inches and eighths: `31 3/8 in`.
    INCH_EIGHTH = 9
    #: Inches and sixteenths: `31 3/16 in`.
    INCH_SIXTEENTH = 10
    #: Inches and thirty-seconds: `31 3/32 in`.
    INCH_THIRTY_SECOND = 11
    #: Inches and eighths as one sign, with the inch mark: `31⅜"`.
    INCH_MARK = 12
    #: Feet, inches and eighths: `2 ft 3 1/8 in`.
    FOOT_EIGHTH = 13
    #: Yards, inches and eighths: `2 yd 4 1/8 in`.
    YARD_EIGHTH = 14


Style.__module__ = "recloth"


class Swatch(IntEnum):
    """How a swatch or hidden part of this very cloth stood the same bath for the same time, wet strength tried by pulling."""

    #: Not tried yet.
    UNTRIED = 0
    #: It kept its strength and did what was wanted.
    PASSED = 1
    #: It weakened, yellowed or bled.
    FAILED = 2


Swatch.__module__ = "recloth"


ArcFromRise = namedtuple("ArcFromRise", ["radius", "length", "angle_deg"], module="recloth")
ArcFromRise.__doc__ = "An arc drawn from its chord and its rise."
ArcFromRise.radius.__doc__ = "Radius of the arc (mm)"
ArcFromRise.length.__doc__ = "Length along the arc (mm)"
ArcFromRise.angle_deg.__doc__ = "Angle from end to end, seen from the centre (deg)"


StockVolume = namedtuple("StockVolume", ["stock_ml", "amount_g", "doubts", "cautions"], module="recloth")
StockVolume.__doc__ = "A measure of stock solution."
StockVolume.stock_ml.__doc__ = "Stock solution to measure out (ml)"
StockVolume.amount_g.__doc__ = "What that holds (g)"
StockVolume.doubts.__doc__ = "Doubts raised (bits)"
StockVolume.cautions.__doc__ = "Cautions raised (bits)"


AvailableChlorine = namedtuple("AvailableChlorine", ["available_pct", "trade_pct", "doubts", "cautions"], module="recloth")
AvailableChlorine.__doc__ = "Strength of a bottle of bleach."
AvailableChlorine.available_pct.__doc__ = "Available chlorine by mass (%)"
AvailableChlorine.trade_pct.__doc__ = "Available chlorine in grams in 100 ml, which the trade also calls percent (%)"
AvailableChlorine.doubts.__doc__ = "Doubts raised (bits)"
AvailableChlorine.cautions.__doc__ = "Cautions raised (bits)"


Batches = namedtuple("Batches", ["numbers", "batches", "least", "capacity_g", "heaviest_g", "doubts", "cautions"], module="recloth")
Batches.__doc__ = "Goods shared out over several baths, no garment split."
Batches.numbers.__doc__ = "number of each garment's bath, from 1"
Batches.batches.__doc__ = "Baths needed, shared out as given"
Batches.least.__doc__ = "Fewest that any sharing out could need, by total mass"
Batches.capacity_g.__doc__ = "Most that the vessel takes at once (g)"
Batches.heaviest_g.__doc__ = "Heaviest bath (g)"
Batches.doubts.__doc__ = "Doubts raised (bits)"
Batches.cautions.__doc__ = "Cautions raised (bits)"


BathVolume = namedtuple("BathVolume", ["volume_ml", "doubts", "cautions"], module="recloth")
BathVolume.__doc__ = "A bath for goods of a given mass."
BathVolume.volume_ml.__doc__ = "Volume of liquor (ml)"
BathVolume.doubts.__doc__ = "Doubts raised (bits)"
BathVolume.cautions.__doc__ = "Cautions raised (bits)"


BiasStrips = namedtuple("BiasStrips", ["strips", "longest", "joined", "kept_pct"], module="recloth")
BiasStrips.__doc__ = "Bias strips cut from a rectangle and joined."
BiasStrips.strips.__doc__ = "Number of strips"
BiasStrips.longest.__doc__ = "Length of the longest, along its shorter edge (mm)"
BiasStrips.joined.__doc__ = "All strips joined on the straight grain, what the joins take left off (mm)"
BiasStrips.kept_pct.__doc__ = "Share of the cloth in them before joining (%)"


BiasTube = namedtuple("BiasTube", ["turns", "length", "leftover"], module="recloth")
BiasTube.__doc__ = "One long bias strip cut from a tube."
BiasTube.turns.__doc__ = "Turns of the strip round the tube"
BiasTube.length.__doc__ = "Length of the strip (mm)"
BiasTube.leftover.__doc__ = "What is left over along the long side, less than one turn (mm)"


BinderSolids = namedtuple("BinderSolids", ["bath_low_pct", "bath_high_pct", "owf_low_pct", "owf_high_pct", "doubts", "cautions"], module="recloth")
BinderSolids.__doc__ = "Solids of a binder laid on cloth."
BinderSolids.bath_low_pct.__doc__ = "Solids in the diluted binder, least (%)"
BinderSolids.bath_high_pct.__doc__ = "Solids in the diluted binder, most (%)"
BinderSolids.owf_low_pct.__doc__ = "Solids on weight of fibre after all dips, least (%)"
BinderSolids.owf_high_pct.__doc__ = "Solids on weight of fibre after all dips, most (%)"
BinderSolids.doubts.__doc__ = "Doubts raised (bits)"
BinderSolids.cautions.__doc__ = "Cautions raised (bits)"


BindingStrips = namedtuple("BindingStrips", ["count", "spare"], module="recloth")
BindingStrips.__doc__ = "Strips to join for a binding."
BindingStrips.count.__doc__ = "Number of strips"
BindingStrips.spare.__doc__ = "What the joined strips are longer than needed (mm)"


BleachDilution = namedtuple("BleachDilution", ["bleach_ml", "water_ml", "parts_water", "doubts", "cautions"], module="recloth")
BleachDilution.__doc__ = "A bleach bath mixed from a bottle."
BleachDilution.bleach_ml.__doc__ = "Bleach from the bottle (ml)"
BleachDilution.water_ml.__doc__ = "Cold water it is added to (ml)"
BleachDilution.parts_water.__doc__ = "Parts of water to one of bleach"
BleachDilution.doubts.__doc__ = "Doubts raised (bits)"
BleachDilution.cautions.__doc__ = "Cautions raised (bits)"


BleachTime = namedtuple("BleachTime", ["time_min", "next_swatch_min", "rate", "doubts", "cautions"], module="recloth")
BleachTime.__doc__ = "Time in the bleach, from timed swatches."
BleachTime.time_min.__doc__ = "Time to the shade wanted (min)"
BleachTime.next_swatch_min.__doc__ = "Time for the next swatch: the time found, but never more than twice the longest swatch (min)"
BleachTime.rate.__doc__ = "Share of the way to the floor gone in a minute, as a rate: the shade falls by e^-rate"
BleachTime.doubts.__doc__ = "Doubts raised (bits)"
BleachTime.cautions.__doc__ = "Cautions raised (bits)"


BoxPleats = namedtuple("BoxPleats", ["flat", "finished", "count", "show", "depth", "intake", "taken_up", "ratio", "doubts"], module="recloth")
BoxPleats.__doc__ = "A set of equal box pleats, or of inverted ones."
BoxPleats.flat.__doc__ = "Width before pleating, without allowances (mm)"
BoxPleats.finished.__doc__ = "Width when pleated (mm)"
BoxPleats.count.__doc__ = "Number of pleats"
BoxPleats.show.__doc__ = "Width from pleat to pleat (mm)"
BoxPleats.depth.__doc__ = "Depth of each of a pleat's two folds (mm)"
BoxPleats.intake.__doc__ = "Cloth that each pleat takes up, four times its depth (mm)"
BoxPleats.taken_up.__doc__ = "Cloth that all pleats take up (mm)"
BoxPleats.ratio.__doc__ = "Flat over finished: 3 where the folds just meet behind"
BoxPleats.doubts.__doc__ = "Doubts raised (bits)"


Breadths = namedtuple("Breadths", ["count", "round", "spare"], module="recloth")
Breadths.__doc__ = "Breadths of cloth sewn into a ring."
Breadths.count.__doc__ = "Number of breadths, which is also the number of seams"
Breadths.round.__doc__ = "Way round when all are joined at their full width (mm)"
Breadths.spare.__doc__ = "What that is more than wanted: gather it in, or cut the last breadth narrower (mm)"


ButtonForHole = namedtuple("ButtonForHole", ["diameter", "creep"], module="recloth")
ButtonForHole.__doc__ = "The button for a slit there is, and how far a cross hole lets the front out."
ButtonForHole.diameter.__doc__ = "Largest diameter of a flat button (mm)"
ButtonForHole.creep.__doc__ = "How far the front is let out when a hole meant to start past the line is centred on it; negative lets it in (mm)"


ButtonLoop = namedtuple("ButtonLoop", ["visible", "cut", "cautions"], module="recloth")
ButtonLoop.__doc__ = "A loop for a button."
ButtonLoop.visible.__doc__ = "Length of the loop that shows (mm)"
ButtonLoop.cut.__doc__ = "Length to cut (mm)"
ButtonLoop.cautions.__doc__ = "Cautions raised (bits)"


ButtonStand = namedtuple("ButtonStand", ["extension", "past_rim", "overlap"], module="recloth")
ButtonStand.__doc__ = "The strip beyond a button line."
ButtonStand.extension.__doc__ = "From the button line to the finished edge (mm)"
ButtonStand.past_rim.__doc__ = "From the button's rim to the finished edge (mm)"
ButtonStand.overlap.__doc__ = "How far the two sides lie over each other when buttoned (mm)"


CapEase = namedtuple("CapEase", ["ease", "ease_pct", "doubts"], module="recloth")
CapEase.__doc__ = "How a sleeve cap compares with its armhole."
CapEase.ease.__doc__ = "What the cap is longer; negative when it is too short to be sewn in (mm)"
CapEase.ease_pct.__doc__ = "The same over the armhole (%)"
CapEase.doubts.__doc__ = "Doubts raised (bits)"


CarriedLiquor = namedtuple("CarriedLiquor", ["carried_ml", "doubts", "cautions"], module="recloth")
CarriedLiquor.__doc__ = "Liquor that goods carry out of a bath."
CarriedLiquor.carried_ml.__doc__ = "Liquor carried (ml)"
CarriedLiquor.doubts.__doc__ = "Doubts raised (bits)"
CarriedLiquor.cautions.__doc__ = "Cautions raised (bits)"


Casing = namedtuple("Casing", ["depth", "allowance"], module="recloth")
Casing.__doc__ = "A casing turned down at an edge."
Casing.depth.__doc__ = "From the fold to the lower stitching (mm)"
Casing.allowance.__doc__ = "Allowance beyond the fold (mm)"


CircleSkirt = namedtuple("CircleSkirt", ["waist_radius", "hem_radius", "hem_length", "doubts"], module="recloth")
CircleSkirt.__doc__ = "A skirt cut from part of a ring: where to set the compass, and how long the hem comes out."
CircleSkirt.waist_radius.__doc__ = "Radius of the waist edge (mm)"
CircleSkirt.hem_radius.__doc__ = "Radius of the hem edge (mm)"
CircleSkirt.hem_length.__doc__ = "Length of the hem edge (mm)"
CircleSkirt.doubts.__doc__ = "Doubts raised (bits)"


CircleSkirtOnCloth = namedtuple("CircleSkirtOnCloth", ["fraction", "length", "waist_radius", "hem_radius", "hem_length", "piece_angle_deg", "cloth_length", "doubts"], module="recloth")
CircleSkirtOnCloth.__doc__ = "A skirt cut from part of a ring, in equal pieces, from cloth of a given width."
CircleSkirtOnCloth.fraction.__doc__ = "Part of a full ring"
CircleSkirtOnCloth.length.__doc__ = "Waist edge to hem edge (mm)"
CircleSkirtOnCloth.waist_radius.__doc__ = "Radius of the waist edge (mm)"
CircleSkirtOnCloth.hem_radius.__doc__ = "Radius of the hem edge (mm)"
CircleSkirtOnCloth.hem_length.__doc__ = "Length of the hem edge, all pieces together (mm)"
CircleSkirtOnCloth.piece_angle_deg.__doc__ = "Angle of one piece (deg)"
CircleSkirtOnCloth.cloth_length.__doc__ = "Cloth one piece takes along the grain (mm)"
CircleSkirtOnCloth.doubts.__doc__ = "Doubts raised (bits)"


ComponentCheck = namedtuple("ComponentCheck", ["bears", "colour", "doubts", "cautions"], module="recloth")
ComponentCheck.__doc__ = "What one part of a garment makes of a bath."
ComponentCheck.bears.__doc__ = "0: it bears the bath; 1: a swatch decides; 2: it does not, so take it off first"
ComponentCheck.colour.__doc__ = "Colour it takes in this bath: 0 none, 1 some or not sure, 2 well"
ComponentCheck.doubts.__doc__ = "Doubts raised (bits)"
ComponentCheck.cautions.__doc__ = "Cautions raised (bits)"


CoverMark = namedtuple("CoverMark", ["now", "depth", "ground_after", "mark_after", "after"], module="recloth")
CoverMark.__doc__ = "A mark dyed over until it no longer shows."
CoverMark.now.__doc__ = "Colour difference of mark and ground as they are, CIEDE2000"
CoverMark.depth.__doc__ = "Depth that the dye must add to both, K/S; 0 when nothing is needed"
CoverMark.ground_after.__doc__ = "Reflectance of the ground then"
CoverMark.mark_after.__doc__ = "Reflectance of the mark then"
CoverMark.after.__doc__ = "Colour difference then"


CurvedBand = namedtuple("CurvedBand", ["tops", "inner_radius", "outer_radius", "angle_deg", "sagitta"], module="recloth")
CurvedBand.__doc__ = "A band in sections whose edges are arcs about one centre."
CurvedBand.tops.__doc__ = "finished upper edge of each section (mm)"
CurvedBand.inner_radius.__doc__ = "Radius of the upper, shorter edge (mm)"
CurvedBand.outer_radius.__doc__ = "Radius of the lower, longer edge (mm)"
CurvedBand.angle_deg.__doc__ = "Angle of all sections together (deg)"
CurvedBand.sagitta.__doc__ = "Height of the longest section's lower arc above the straight line between its ends (mm)"


CurvedBinding = namedtuple("CurvedBinding", ["seam", "stretch_pct", "width_pct"], module="recloth")
CurvedBinding.__doc__ = "A bias binding on a curved edge."
CurvedBinding.seam.__doc__ = "Length of the seam that sews the binding on (mm)"
CurvedBinding.stretch_pct.__doc__ = "What the strip is stretched along that seam; negative where it is eased (%)"
CurvedBinding.width_pct.__doc__ = "Width that a bias strip keeps where it is so stretched; above 100 where it is eased (%)"


CutForChange = namedtuple("CutForChange", ["cut", "added", "doubts"], module="recloth")
CutForChange.__doc__ = "A length to cut so that washing brings it to size."
CutForChange.cut.__doc__ = "Length to cut (mm)"
CutForChange.added.__doc__ = "What is added; negative for cloth that grows (mm)"
CutForChange.doubts.__doc__ = "Doubts raised (bits)"


CutState = namedtuple("CutState", ["finished", "cut"], module="recloth")
CutState.__doc__ = "Finished and cut width of a drawn piece."
CutState.finished.__doc__ = "Width between the seam lines (mm)"
CutState.cut.__doc__ = "Width between the cut edges (mm)"


Dart = namedtuple("Dart", ["leg", "angle_deg", "doubts"], module="recloth")
Dart.__doc__ = "A dart with two equal legs."
Dart.leg.__doc__ = "Length of each leg, edge to point (mm)"
Dart.angle_deg.__doc__ = "Angle at the point, which is also the kink of a straight edge when the dart is closed (deg)"
Dart.doubts.__doc__ = "Doubts raised (bits)"


DartEquivalent = namedtuple("DartEquivalent", ["ease_pct", "gather_ratio", "tuck_depth", "doubts"], module="recloth")
DartEquivalent.__doc__ = "What takes up as much of an edge as a dart does."
DartEquivalent.ease_pct.__doc__ = "Ease of the seam, if it is eased in (%)"
DartEquivalent.gather_ratio.__doc__ = "Ratio of the gathers, if it is gathered"
DartEquivalent.tuck_depth.__doc__ = "Depth of each tuck or pleat, if it is folded (mm)"
DartEquivalent.doubts.__doc__ = "`GATHERS_SCANT` or `GATHERS_LARGE` when as gathers it would look like a mistake (bits)"


DartFromGape = namedtuple("DartFromGape", ["intake", "angle_deg"], module="recloth")
DartFromGape.__doc__ = "A dart that takes up what an edge gapes."
DartFromGape.intake.__doc__ = "Width of the dart at its own edge (mm)"
DartFromGape.angle_deg.__doc__ = "Angle at the point (deg)"


DartInPanel = namedtuple("DartInPanel", ["intake_each", "leftover", "leg", "kink_deg", "doubts"], module="recloth")
DartInPanel.__doc__ = "Darts that bring a given panel to a wanted width, and what is left for the side seam."
DartInPanel.intake_each.__doc__ = "Intake of each dart (mm)"
DartInPanel.leftover.__doc__ = "Width still to be taken, at the side seam (mm)"
DartInPanel.leg.__doc__ = "Length of each leg (mm)"
DartInPanel.kink_deg.__doc__ = "Kink of the straight edge at each closed dart; the edge is trued there before cutting (deg)"
DartInPanel.doubts.__doc__ = "Doubts raised (bits)"


DoubleDart = namedtuple("DoubleDart", ["upper_leg", "lower_leg", "upper_angle_deg", "lower_angle_deg", "bend_deg", "doubts"], module="recloth")
DoubleDart.__doc__ = "A dart with a point at each end, widest between them."
DoubleDart.upper_leg.__doc__ = "Length of each upper leg (mm)"
DoubleDart.lower_leg.__doc__ = "Length of each lower leg (mm)"
DoubleDart.upper_angle_deg.__doc__ = "Angle at the upper point (deg)"
DoubleDart.lower_angle_deg.__doc__ = "Angle at the lower point (deg)"
DoubleDart.bend_deg.__doc__ = "How far each leg turns where the dart is widest, where its fold is snipped (deg)"
DoubleDart.doubts.__doc__ = "Doubts raised (bits)"


Elastic = namedtuple("Elastic", ["round", "cut", "worn_pct", "passing_pct", "doubts", "cautions"], module="recloth")
Elastic.__doc__ = "Elastic for an edge."
Elastic.round.__doc__ = "Way round the joined elastic, not stretched (mm)"
Elastic.cut.__doc__ = "Length to cut, with its overlap (mm)"
Elastic.worn_pct.__doc__ = "Stretch when worn (%)"
Elastic.passing_pct.__doc__ = "Stretch when the widest part passes through (%)"
Elastic.doubts.__doc__ = "Doubts raised (bits)"
Elastic.cautions.__doc__ = "Always `ELASTIC_BATH` (bits)"


FiveGores = namedtuple("FiveGores", ["front_waist", "side_waist", "back_waist", "front_hip", "side_hip", "back_hip", "doubts"], module="recloth")
FiveGores.__doc__ = "Widths of half a five-gored skirt by a handed-down rule: half the front, a side gore and a back."
FiveGores.front_waist.__doc__ = "Half the front gore at the waist (mm)"
FiveGores.side_waist.__doc__ = "Side gore at the waist (mm)"
FiveGores.back_waist.__doc__ = "Back gore at the waist, its gathers included (mm)"
FiveGores.front_hip.__doc__ = "Half the front gore at the hip (mm)"
FiveGores.side_hip.__doc__ = "Side gore at the hip (mm)"
FiveGores.back_hip.__doc__ = "Back gore at the hip (mm)"
FiveGores.doubts.__doc__ = "Doubts raised (bits)"


Flounce = namedtuple("Flounce", ["inner_radius", "outer_radius", "hem", "ratio", "square"], module="recloth")
Flounce.__doc__ = "A flounce cut from rings."
Flounce.inner_radius.__doc__ = "Radius of the seam line that is sewn on (mm)"
Flounce.outer_radius.__doc__ = "Radius of the finished hem (mm)"
Flounce.hem.__doc__ = "Finished hem of all rings joined (mm)"
Flounce.ratio.__doc__ = "Hem over edge: how much it ripples"
Flounce.square.__doc__ = "Side of the square of cloth that each ring takes, without hem allowance (mm)"


FoldedBand = namedtuple("FoldedBand", ["cut_width", "fold_line", "inner"], module="recloth")
FoldedBand.__doc__ = "The strip a folded band is cut from, with its lines."
FoldedBand.cut_width.__doc__ = "Width to cut, raw edge to raw edge (mm)"
FoldedBand.fold_line.__doc__ = "Fold line from the raw edge that is sewn to the garment (mm)"
FoldedBand.inner.__doc__ = "From the fold to the raw edge of the inner layer (mm)"


Frustum = namedtuple("Frustum", ["slant", "inner_radius", "outer_radius", "angle_deg", "area_mm2"], module="recloth")
Frustum.__doc__ = "A cone, or a part of one between two level cuts, unrolled."
Frustum.slant.__doc__ = "From edge to edge along the cloth (mm)"
Frustum.inner_radius.__doc__ = "Radius of the upper, smaller edge, laid flat (mm)"
Frustum.outer_radius.__doc__ = "Radius of the lower, larger edge, laid flat (mm)"
Frustum.angle_deg.__doc__ = "Angle of the sector (deg)"
Frustum.area_mm2.__doc__ = "Area of the sector, without allowances (mm2)"


Gathers = namedtuple("Gathers", ["flat", "taken_up", "ratio", "doubts"], module="recloth")
Gathers.__doc__ = "A strip to be gathered."
Gathers.flat.__doc__ = "Length of the strip before gathering, without allowances (mm)"
Gathers.taken_up.__doc__ = "What the gathers take up (mm)"
Gathers.ratio.__doc__ = "Strip over line: 1.5 is half as much again"
Gathers.doubts.__doc__ = "Doubts raised (bits)"


GatherSections = namedtuple("GatherSections", ["flats", "finished", "ratio", "doubts"], module="recloth")
GatherSections.__doc__ = "A strip to be gathered, divided over the sections of its line."
GatherSections.flats.__doc__ = "part of the strip for each section (mm)"
GatherSections.finished.__doc__ = "Length of the line, all sections together (mm)"
GatherSections.ratio.__doc__ = "Strip over line, the same in every section"
GatherSections.doubts.__doc__ = "Doubts raised (bits)"


Godet = namedtuple("Godet", ["angle_deg", "chord", "sagitta", "added"], module="recloth")
Godet.__doc__ = "A godet: a sector let into a seam or a slit."
Godet.angle_deg.__doc__ = "Angle at the point (deg)"
Godet.chord.__doc__ = "Straight across the hem from side to side, which is the cloth's width that it takes (mm)"
Godet.sagitta.__doc__ = "How far the hem bows below that (mm)"
Godet.added.__doc__ = "What all godets add to the hem (mm)"


Gore = namedtuple("Gore", ["waist_width", "hip_width", "hem_width", "side_length", "flare_deg", "hem_rise", "doubts"], module="recloth")
Gore.__doc__ = "One of several equal gores."
Gore.waist_width.__doc__ = "Width at the waist (mm)"
Gore.hip_width.__doc__ = "Width at the hip (mm)"
Gore.hem_width.__doc__ = "Width at the hem (mm)"
Gore.side_length.__doc__ = "Length of each side edge, waist to hip to hem (mm)"
Gore.flare_deg.__doc__ = "Lean of each side edge below the hip; negative where it tapers in (deg)"
Gore.hem_rise.__doc__ = "What each side edge is longer than the middle, taken off at the hem's ends so that it hangs level (mm)"
Gore.doubts.__doc__ = "Doubts raised (bits)"


Gusset = namedtuple("Gusset", ["angle_deg", "long_diagonal", "cut_long", "cut_short"], module="recloth")
Gusset.__doc__ = "A diamond let into two slits."
Gusset.angle_deg.__doc__ = "Angle at each slit's end (deg)"
Gusset.long_diagonal.__doc__ = "From slit's end to slit's end (mm)"
Gusset.cut_long.__doc__ = "Cut from point to point the long way, allowances included (mm)"
Gusset.cut_short.__doc__ = "Cut from point to point the short way, allowances included (mm)"


HeadOpening = namedtuple("HeadOpening", ["least_slit", "spare", "doubts"], module="recloth")
HeadOpening.__doc__ = "An opening that a head, or the widest part of a body, must pass."
HeadOpening.least_slit.__doc__ = "Least length of the slit; 0 where none is needed (mm)"
HeadOpening.spare.__doc__ = "What the opening is wider than needed; negative when it does not pass (mm)"
HeadOpening.doubts.__doc__ = "Doubts raised (bits)"


HemLetDown = namedtuple("HemLetDown", ["left", "crease", "stitching", "longest", "longest_faced"], module="recloth")
HemLetDown.__doc__ = "A hem that is let down."
HemLetDown.left.__doc__ = "Cloth left below the new edge for its hem or facing (mm)"
HemLetDown.crease.__doc__ = "The old edge's crease above the new edge (mm)"
HemLetDown.stitching.__doc__ = "The old hem's stitching above the new edge (mm)"
HemLetDown.longest.__doc__ = "The most it can be lowered with a hem of its own (mm)"
HemLetDown.longest_faced.__doc__ = "The most it can be lowered with a facing sewn on (mm)"


HemOnCurve = namedtuple("HemOnCurve", ["excess_pct", "excess", "raw_edge"], module="recloth")
HemOnCurve.__doc__ = "Cloth that a curved hem has too much of when it is turned up."
HemOnCurve.excess_pct.__doc__ = "What the raw edge is longer than the line it lies on when turned up (%)"
HemOnCurve.excess.__doc__ = "The same over the whole hem, to be eased, shrunk or folded away (mm)"
HemOnCurve.raw_edge.__doc__ = "Length of the raw edge before turning (mm)"


HipWaistDrop = namedtuple("HipWaistDrop", ["drop", "doubts"], module="recloth")
HipWaistDrop.__doc__ = "How much larger a hip is than a waist."
HipWaistDrop.drop.__doc__ = "Hip less waist; negative where the waist is larger (mm)"
HipWaistDrop.doubts.__doc__ = "Doubts raised, as by `waist_hip_doubts` (bits)"


HolesLeft = namedtuple("HolesLeft", ["count", "last", "to_end", "doubts"], module="recloth")
HolesLeft.__doc__ = "The holes that stay on an edge that is shortened."
HolesLeft.count.__doc__ = "Number of holes left"
HolesLeft.last.__doc__ = "Place of the last of them, from the same end as the first (mm)"
HolesLeft.to_end.__doc__ = "From the last hole to the new end of the edge (mm)"
HolesLeft.doubts.__doc__ = "Doubts raised (bits)"


InsertStrip = namedtuple("InsertStrip", ["finished", "cut_width", "cloth"], module="recloth")
InsertStrip.__doc__ = "A strip let into a garment that is too narrow."
InsertStrip.finished.__doc__ = "Width of each strip between its seam lines, as it shows (mm)"
InsertStrip.cut_width.__doc__ = "Width to cut each strip (mm)"
InsertStrip.cloth.__doc__ = "Cloth that all strips take side by side (mm)"


KnifePleats = namedtuple("KnifePleats", ["flat", "finished", "count", "show", "depth", "intake", "taken_up", "ratio", "doubts"], module="recloth")
KnifePleats.__doc__ = "A set of equal knife pleats."
KnifePleats.flat.__doc__ = "Width before pleating, without allowances (mm)"
KnifePleats.finished.__doc__ = "Width when pleated (mm)"
KnifePleats.count.__doc__ = "Number of pleats"
KnifePleats.show.__doc__ = "Width of each pleat that shows (mm)"
KnifePleats.depth.__doc__ = "Depth of each pleat's underlay, fold to fold (mm)"
KnifePleats.intake.__doc__ = "Cloth that each pleat takes up, twice its depth (mm)"
KnifePleats.taken_up.__doc__ = "Cloth that all pleats take up (mm)"
KnifePleats.ratio.__doc__ = "Flat over finished: 3 where pleats just touch"
KnifePleats.doubts.__doc__ = "Doubts raised (bits)"


Lab = namedtuple("Lab", ["l", "a", "b"], module="recloth")
Lab.__doc__ = "A colour in CIELAB."
Lab.l.__doc__ = "Lightness L*: 0 is black, 100 white"
Lab.a.__doc__ = "a*: green below 0, red above"
Lab.b.__doc__ = "b*: blue below 0, yellow above"


LengthChain = namedtuple("LengthChain", ["value", "plus", "minus", "worst_per_mm", "likely_per_mm"], module="recloth")
LengthChain.__doc__ = "The unknown of a chain of lengths, and how sure it is."
LengthChain.value.__doc__ = "The length sought (mm)"
LengthChain.plus.__doc__ = "What the known terms with a plus add up to (mm)"
LengthChain.minus.__doc__ = "What the known terms with a minus take away (mm)"
LengthChain.worst_per_mm.__doc__ = "How far the value is off at worst, for each mm that every known length may be off"
LengthChain.likely_per_mm.__doc__ = "How far the value is off in the usual case, for each mm that every known length may be off"


ChainShares = namedtuple("ChainShares", ["parts", "misses", "value", "worst", "likely", "largest", "largest_part"], module="recloth")
ChainShares.__doc__ = "How sure the unknown of a chain of lengths is, and which term does most to it."
ChainShares.parts.__doc__ = "what each adds to the total (mm)"
ChainShares.misses.__doc__ = "how far the error of each moves the unknown (mm)"
ChainShares.value.__doc__ = "The length sought (mm)"
ChainShares.worst.__doc__ = "How far it is off when every error falls the same way (mm)"
ChainShares.likely.__doc__ = "How far it is off when they fall by chance: the root of the sum of their squares (mm)"
ChainShares.largest.__doc__ = "Index of the term whose error moves it most, of equals the first; their number is the total"
ChainShares.largest_part.__doc__ = "What that term's error adds to the worst case (mm)"


LetOut = namedtuple("LetOut", ["lacking", "each", "gained", "short_by", "doubts"], module="recloth")
LetOut.__doc__ = "What the allowances of a garment give when they are let out."
LetOut.lacking.__doc__ = "What the garment is too narrow by (mm)"
LetOut.each.__doc__ = "Let out at each edge (mm)"
LetOut.gained.__doc__ = "Let out at all edges together (mm)"
LetOut.short_by.__doc__ = "Still lacking: a strip or a gusset must give it (mm)"
LetOut.doubts.__doc__ = "Doubts raised (bits)"


LevelLine = namedtuple("LevelLine", ["radius", "chord", "sag", "length"], module="recloth")
LevelLine.__doc__ = "A hem level with a kept edge, and how far a straight cut would miss it."
LevelLine.radius.__doc__ = "Radius of the line (mm)"
LevelLine.chord.__doc__ = "Straight across from end to end of the line (mm)"
LevelLine.sag.__doc__ = "How far the line bows below its chord (mm)"
LevelLine.length.__doc__ = "Length along the line (mm)"


LiningLength = namedtuple("LiningLength", ["seam_to_seam", "straight", "spare", "fold", "doubts"], module="recloth")
LiningLength.__doc__ = "Length of a lining that is sewn to the top of the shell's hem, with a fold."
LiningLength.seam_to_seam.__doc__ = "Lining from its upper seam to the seam at the top of the hem, without allowances (mm)"
LiningLength.straight.__doc__ = "The shell's own distance between these two seams (mm)"
LiningLength.spare.__doc__ = "What the lining is longer by, which lies in the fold (mm)"
LiningLength.fold.__doc__ = "Depth of the fold, from the hem's top seam down (mm)"
LiningLength.doubts.__doc__ = "Doubts raised (bits)"


LiquorShares = namedtuple("LiquorShares", ["shares_ml", "waters_ml", "bath_ml", "water_ml", "doubts", "cautions"], module="recloth")
LiquorShares.__doc__ = "One liquor shared over several baths."
LiquorShares.shares_ml.__doc__ = "pooled liquor for each bath (ml)"
LiquorShares.waters_ml.__doc__ = "water added to each bath (ml)"
LiquorShares.bath_ml.__doc__ = "All baths together, topped up (ml)"
LiquorShares.water_ml.__doc__ = "Fresh water to top all of them up (ml)"
LiquorShares.doubts.__doc__ = "Doubts raised (bits)"
LiquorShares.cautions.__doc__ = "Cautions raised (bits)"


LoopSlack = namedtuple("LoopSlack", ["slack", "doubts"], module="recloth")
LoopSlack.__doc__ = "A loop there is, compared with the one that just passes over its button."
LoopSlack.slack.__doc__ = "What the loop is longer than the one that just passes; negative when it is too short (mm)"
LoopSlack.doubts.__doc__ = "Doubts raised (bits)"


MixTemperature = namedtuple("MixTemperature", ["temperature_c", "volume_ml", "doubts", "cautions"], module="recloth")
MixTemperature.__doc__ = "Temperature of a bath put together."
MixTemperature.temperature_c.__doc__ = "Temperature before the pot and the air have taken their part (degC)"
MixTemperature.volume_ml.__doc__ = "Volume of liquor (ml)"
MixTemperature.doubts.__doc__ = "Doubts raised (bits)"
MixTemperature.cautions.__doc__ = "Cautions raised (bits)"


NapLayout = namedtuple("NapLayout", ["across_one_way", "across_turned", "length_one_way", "length_turned", "nap_extra", "doubts"], module="recloth")
NapLayout.__doc__ = "Panels wider at one end, laid across the cloth all one way up, or turned every other."
NapLayout.across_one_way.__doc__ = "Panels side by side when all lie one way up"
NapLayout.across_turned.__doc__ = "Panels side by side when every other is turned upside down"
NapLayout.length_one_way.__doc__ = "Length of cloth when all lie one way up (mm)"
NapLayout.length_turned.__doc__ = "Length of cloth when every other is turned (mm)"
NapLayout.nap_extra.__doc__ = "What the nap takes: the one length less the other (mm)"
NapLayout.doubts.__doc__ = "Doubts raised (bits)"


NeedleBlade = namedtuple("NeedleBlade", ["blade", "thread"], module="recloth")
NeedleBlade.__doc__ = "A machine needle's blade."
NeedleBlade.blade.__doc__ = "Diameter of the blade above the scarf (mm)"
NeedleBlade.thread.__doc__ = "Thickest thread that runs freely in its long groove (mm)"


NegativeEase = namedtuple("NegativeEase", ["girth", "ease", "furthest", "doubts"], module="recloth")
NegativeEase.__doc__ = "A garment smaller than the body it is worn on."
NegativeEase.girth.__doc__ = "Finished girth of the garment at rest (mm)"
NegativeEase.ease.__doc__ = "Girth less the body's, so negative (mm)"
NegativeEase.furthest.__doc__ = "Furthest girth that the cloth stretches to (mm)"
NegativeEase.doubts.__doc__ = "Doubts raised (bits)"


Neutraliser = namedtuple("Neutraliser", ["chlorine_g", "amount_g", "ratio", "doubts", "cautions"], module="recloth")
Neutraliser.__doc__ = "A neutralising bath."
Neutraliser.chlorine_g.__doc__ = "Available chlorine the goods still carry (g)"
Neutraliser.amount_g.__doc__ = "Neutraliser to weigh out, excess included (g)"
Neutraliser.ratio.__doc__ = "Grams of the pure stuff for a gram of available chlorine, excess left out"
Neutraliser.doubts.__doc__ = "Doubts raised (bits)"
Neutraliser.cautions.__doc__ = "Cautions raised (bits)"


OffCentreOpening = namedtuple("OffCentreOpening", ["narrow_to_line", "wide_to_line", "narrow_cut", "wide_cut", "largest_shift", "dart_to_narrow", "dart_to_wide", "doubts"], module="recloth")
OffCentreOpening.__doc__ = "The two fronts of a garment that opens off its centre line."
OffCentreOpening.narrow_to_line.__doc__ = "Narrow front, button line to the cut edge at its side (mm)"
OffCentreOpening.wide_to_line.__doc__ = "Wide front, button line to the cut edge at its side (mm)"
OffCentreOpening.narrow_cut.__doc__ = "Narrow front, opening edge to the cut edge at its side (mm)"
OffCentreOpening.wide_cut.__doc__ = "Wide front, opening edge to the cut edge at its side (mm)"
OffCentreOpening.largest_shift.__doc__ = "Largest shift that the wide panel allows (mm)"
OffCentreOpening.dart_to_narrow.__doc__ = "Dart from the narrow front's button line; negative beyond the line, towards the edge (mm)"
OffCentreOpening.dart_to_wide.__doc__ = "Dart from the wide front's button line (mm)"
OffCentreOpening.doubts.__doc__ = "Doubts raised (bits)"


Overdye = namedtuple("Overdye", ["pale", "deep", "pale_l", "deep_l"], module="recloth")
Overdye.__doc__ = "What a dye over cloth may come to, from pale to deep."
Overdye.pale.__doc__ = "Reflectance where the dye takes least"
Overdye.deep.__doc__ = "Reflectance where the dye takes most"
Overdye.pale_l.__doc__ = "Lightness L* of a grey of the pale reflectance"
Overdye.deep_l.__doc__ = "Lightness L* of a grey of the deep reflectance"


Owf = namedtuple("Owf", ["amount_g", "doubts", "cautions"], module="recloth")
Owf.__doc__ = "What goes into a bath."
Owf.amount_g.__doc__ = "Mass to weigh out (g)"
Owf.doubts.__doc__ = "Doubts raised (bits)"
Owf.cautions.__doc__ = "Cautions raised (bits)"


PanelByOffsets = namedtuple("PanelByOffsets", ["left_bow", "right_bow", "area", "length", "widest", "narrowest", "largest_bow"], module="recloth")
PanelByOffsets.__doc__ = "A panel measured at stations along a grain line."
PanelByOffsets.left_bow.__doc__ = "left edge beyond its straight line; negative within (mm)"
PanelByOffsets.right_bow.__doc__ = "right edge beyond its straight line (mm)"
PanelByOffsets.area.__doc__ = "Area between the first and the last station (mm2)"
PanelByOffsets.length.__doc__ = "From the first to the last station (mm)"
PanelByOffsets.widest.__doc__ = "Greatest width at a station (mm)"
PanelByOffsets.narrowest.__doc__ = "Least width at a station (mm)"
PanelByOffsets.largest_bow.__doc__ = "Farthest that a side leaves the straight line between its ends, measured across (mm)"


PanelByTriangles = namedtuple("PanelByTriangles", ["along", "across", "misfits", "area", "perimeter", "largest_misfit", "weakest_corner", "weakest_per_mm", "doubts"], module="recloth")
PanelByTriangles.__doc__ = "A panel of corners measured by tape."
PanelByTriangles.along.__doc__ = "each corner along the base (mm)"
PanelByTriangles.across.__doc__ = "each corner square to it (mm)"
PanelByTriangles.misfits.__doc__ = "what each spare reading misses (mm)"
PanelByTriangles.area.__doc__ = "Area within the corners (mm2)"
PanelByTriangles.perimeter.__doc__ = "Way round the corners (mm)"
PanelByTriangles.largest_misfit.__doc__ = "Largest misfit of a spare reading, without its sign (mm)"
PanelByTriangles.weakest_corner.__doc__ = "The corner whose own triangle holds it least"
PanelByTriangles.weakest_per_mm.__doc__ = "How far that corner moves at worst along or across its base, for each mm that its readings are off"
PanelByTriangles.doubts.__doc__ = "`TRIANGLE_FLAT` and `TRIANGLE_TALL` of any corner, `SPARE_MISFIT` when a spare reading misses by over 0.5 % (bits)"


PhotoMap = namedtuple("PhotoMap", ["along", "across", "scales", "reach", "coarsest", "doubts"], module="recloth")
PhotoMap.__doc__ = "How far points from a photograph may be trusted."
PhotoMap.along.__doc__ = "true place of each point, along (mm)"
PhotoMap.across.__doc__ = "true place of each point, across (mm)"
PhotoMap.scales.__doc__ = "length that one picture unit stands for there (mm)"
PhotoMap.reach.__doc__ = "Farthest that a point lies beyond the reference, in sizes of the reference in that direction"
PhotoMap.coarsest.__doc__ = "Largest length that one picture unit stands for at a point (mm)"
PhotoMap.doubts.__doc__ = "`PHOTO_REACH` when a point lies more than 1.5 sizes beyond the reference (bits)"


PiecedLength = namedtuple("PiecedLength", ["joined", "spare", "joins", "fewest"], module="recloth")
PiecedLength.__doc__ = "Scraps joined to one length."
PiecedLength.joined.__doc__ = "Length of all scraps joined, free ends raw (mm)"
PiecedLength.spare.__doc__ = "What that is longer than needed; negative when it does not reach (mm)"
PiecedLength.joins.__doc__ = "Number of joins when all are used"
PiecedLength.fewest.__doc__ = "Fewest scraps that reach, the longest taken first; 0 when all together do not"


PlantDyestuff = namedtuple("PlantDyestuff", ["low_g", "high_g", "doubts", "cautions"], module="recloth")
PlantDyestuff.__doc__ = "Plant matter to collect."
PlantDyestuff.low_g.__doc__ = "Least to weigh out, as it is at hand (g)"
PlantDyestuff.high_g.__doc__ = "Most to weigh out, as it is at hand (g)"
PlantDyestuff.doubts.__doc__ = "Doubts raised (bits)"
PlantDyestuff.cautions.__doc__ = "Cautions raised (bits)"


PooledStrength = namedtuple("PooledStrength", ["strength_pct", "volume_ml", "cautions"], module="recloth")
PooledStrength.__doc__ = "Several liquors of the same stuff poured together."
PooledStrength.strength_pct.__doc__ = "Strength, in the unit of the strengths given (%)"
PooledStrength.volume_ml.__doc__ = "Volume (ml)"
PooledStrength.cautions.__doc__ = "Cautions raised (bits)"


PuffSpread = namedtuple("PuffSpread", ["flat", "added", "spread_each", "strip_ratio", "doubts"], module="recloth")
PuffSpread.__doc__ = "A cap slashed and spread for a puff."
PuffSpread.flat.__doc__ = "Zone after spreading, before gathering (mm)"
PuffSpread.added.__doc__ = "What spreading adds in all (mm)"
PuffSpread.spread_each.__doc__ = "How far each slash opens (mm)"
PuffSpread.strip_ratio.__doc__ = "The ratio that the strip to be let in allows"
PuffSpread.doubts.__doc__ = "`GATHERS_SCANT` or `GATHERS_LARGE` when the smaller of the ratios asked for looks like a mistake (bits)"


Repeats = namedtuple("Repeats", ["repeats", "each", "total", "waste"], module="recloth")
Repeats.__doc__ = "Equal lengths cut so that a pattern matches."
Repeats.repeats.__doc__ = "Whole repeats in one length"
Repeats.each.__doc__ = "Length to cut each (mm)"
Repeats.total.__doc__ = "All lengths together (mm)"
Repeats.waste.__doc__ = "What is cut off and lies idle, all lengths together (mm)"


Ribbing = namedtuple("Ribbing", ["round", "cut_length", "cut_width", "stretch_pct"], module="recloth")
Ribbing.__doc__ = "A folded strip of ribbing."
Ribbing.round.__doc__ = "Way round the joined strip, not stretched (mm)"
Ribbing.cut_length.__doc__ = "Length to cut, along the way it stretches (mm)"
Ribbing.cut_width.__doc__ = "Width to cut, folded in two when sewn (mm)"
Ribbing.stretch_pct.__doc__ = "Stretch that it is sewn on with (%)"


Rinses = namedtuple("Rinses", ["rinses_low", "rinses_high", "left", "water_ml", "doubts", "cautions"], module="recloth")
Rinses.__doc__ = "Rinses, as a range."
Rinses.rinses_low.__doc__ = "Rinses where the goods carry least"
Rinses.rinses_high.__doc__ = "Rinses where the goods carry most"
Rinses.left.__doc__ = "Share of the first liquor left after the most rinses, where the goods carry most"
Rinses.water_ml.__doc__ = "Fresh water for the most rinses (ml)"
Rinses.doubts.__doc__ = "Doubts raised (bits)"
Rinses.cautions.__doc__ = "Cautions raised (bits)"


RoundedSet = namedtuple("RoundedSet", ["tapes", "total", "largest_change"], module="recloth")
RoundedSet.__doc__ = "A set of lengths rounded together."
RoundedSet.tapes.__doc__ = "the rounded lengths (mm)"
RoundedSet.total.__doc__ = "Sum of the rounded lengths, which is the rounded sum (mm)"
RoundedSet.largest_change.__doc__ = "Most that any length was changed, up or down (mm)"


Ruffle = namedtuple("Ruffle", ["flat", "cut_width", "strips", "cloth_length", "doubts"], module="recloth")
Ruffle.__doc__ = "Strips for a ruffle."
Ruffle.flat.__doc__ = "Length of the joined strip before gathering (mm)"
Ruffle.cut_width.__doc__ = "Width to cut each strip (mm)"
Ruffle.strips.__doc__ = "Number of strips"
Ruffle.cloth_length.__doc__ = "Cloth that the strips take, lying side by side (mm)"
Ruffle.doubts.__doc__ = "Doubts raised (bits)"


SeamPleat = namedtuple("SeamPleat", ["first_edge", "next_edge", "intake"], module="recloth")
SeamPleat.__doc__ = "Cloth added at a seam for an inverted pleat."
SeamPleat.first_edge.__doc__ = "Added to the edge whose seam lies in the nearer inner fold (mm)"
SeamPleat.next_edge.__doc__ = "Added to the edge that makes the rest of the pleat (mm)"
SeamPleat.intake.__doc__ = "Both together, less the seam: what the pleat takes up (mm)"


SectionedBand = namedtuple("SectionedBand", ["tops", "slant", "end_angle_deg", "join_kink_deg", "doubts"], module="recloth")
SectionedBand.__doc__ = "A band of straight sections with slanted ends."
SectionedBand.tops.__doc__ = "finished upper edge of each section (mm)"
SectionedBand.slant.__doc__ = "What each slanted end takes from the upper edge; negative where the band flares (mm)"
SectionedBand.end_angle_deg.__doc__ = "Angle of a slanted end from the square (deg)"
SectionedBand.join_kink_deg.__doc__ = "Kink at each join: a peak of the lower edge and a notch of the upper; 0 without a join (deg)"
SectionedBand.doubts.__doc__ = "Doubts raised (bits)"


ShapedBand = namedtuple("ShapedBand", ["inner_radius", "outer_radius", "angle_deg", "sagitta", "area_mm2"], module="recloth")
ShapedBand.__doc__ = "A band cut as part of a ring."
ShapedBand.inner_radius.__doc__ = "Radius of the upper, shorter edge (mm)"
ShapedBand.outer_radius.__doc__ = "Radius of the lower, longer edge (mm)"
ShapedBand.angle_deg.__doc__ = "Angle of the sector (deg)"
ShapedBand.sagitta.__doc__ = "Height of the lower edge's arc above the straight line between its ends (mm)"
ShapedBand.area_mm2.__doc__ = "Area of the band (mm2)"


Shirring = namedtuple("Shirring", ["flat", "ratio", "rows", "stitching", "cautions"], module="recloth")
Shirring.__doc__ = "Cloth drawn up by rows of elastic thread."
Shirring.flat.__doc__ = "Width before shirring, without allowances (mm)"
Shirring.ratio.__doc__ = "Flat over finished"
Shirring.rows.__doc__ = "Number of rows"
Shirring.stitching.__doc__ = "All rows together, as sewn on the flat cloth (mm)"
Shirring.cautions.__doc__ = "Always `ELASTIC_BATH` (bits)"


ShrinkPair = namedtuple("ShrinkPair", ["shell_after", "lining_after", "below", "shell_cut", "lining_cut", "doubts"], module="recloth")
ShrinkPair.__doc__ = "A shell and its lining, washed."
ShrinkPair.shell_after.__doc__ = "Shell after washing, if it is sewn as given (mm)"
ShrinkPair.lining_after.__doc__ = "Lining after washing, if it is sewn as given (mm)"
ShrinkPair.below.__doc__ = "How far the lining then hangs below the shell; negative above (mm)"
ShrinkPair.shell_cut.__doc__ = "Shell to cut so that washing leaves the length given (mm)"
ShrinkPair.lining_cut.__doc__ = "Lining to cut so that washing leaves the length given (mm)"
ShrinkPair.doubts.__doc__ = "Doubts raised (bits)"


SizeStep = namedtuple("SizeStep", ["step", "each_edge", "doubts"], module="recloth")
SizeStep.__doc__ = "The step from size to size."
SizeStep.step.__doc__ = "From one size to the next, all round (mm)"
SizeStep.each_edge.__doc__ = "The same at each edge of the pattern (mm)"
SizeStep.doubts.__doc__ = "Doubts raised (bits)"


SnipSpacing = namedtuple("SnipSpacing", ["spacing", "flat"], module="recloth")
SnipSpacing.__doc__ = "Snips or notches that let a curved allowance lie flat."
SnipSpacing.spacing.__doc__ = "From snip to snip along the seam line (mm)"
SnipSpacing.flat.__doc__ = "How far a straight fold between two snips leaves the curve (mm)"


SpacingByPitch = namedtuple("SpacingByPitch", ["count", "pitch"], module="recloth")
SpacingByPitch.__doc__ = "Buttons or holes at nearly a wanted pitch."
SpacingByPitch.count.__doc__ = "Number of buttons, the first and last included"
SpacingByPitch.pitch.__doc__ = "From middle to middle of neighbours (mm)"


SpacingThrough = namedtuple("SpacingThrough", ["places", "pitch_before", "pitch_after", "fixed", "doubts"], module="recloth")
SpacingThrough.__doc__ = "Buttons spaced through one fixed place."
SpacingThrough.places.__doc__ = "the places, in order (mm)"
SpacingThrough.pitch_before.__doc__ = "From middle to middle before the fixed place (mm)"
SpacingThrough.pitch_after.__doc__ = "From middle to middle after the fixed place (mm)"
SpacingThrough.fixed.__doc__ = "Which of the places is the fixed one, from 0"
SpacingThrough.doubts.__doc__ = "Doubts raised (bits)"


Srgb = namedtuple("Srgb", ["red", "green", "blue", "outside"], module="recloth")
Srgb.__doc__ = "A colour by its screen levels."
Srgb.red.__doc__ = "Red, 0 to 255 where a screen can show it"
Srgb.green.__doc__ = "Green, 0 to 255 where a screen can show it"
Srgb.blue.__doc__ = "Blue, 0 to 255 where a screen can show it"
Srgb.outside.__doc__ = "How many of the three a screen cannot show"


StraightBand = namedtuple("StraightBand", ["cut_length", "cut_width", "strips", "doubts"], module="recloth")
StraightBand.__doc__ = "The strip a straight band is cut from."
StraightBand.cut_length.__doc__ = "Length to cut, allowances included (mm)"
StraightBand.cut_width.__doc__ = "Width to cut, allowances included (mm)"
StraightBand.strips.__doc__ = "How many such strips"
StraightBand.doubts.__doc__ = "Doubts raised (bits)"


TakeIn = namedtuple("TakeIn", ["excess", "each", "taken", "leftover", "doubts"], module="recloth")
TakeIn.__doc__ = "What is taken in at the seams of a garment."
TakeIn.excess.__doc__ = "What the garment is too wide by (mm)"
TakeIn.each.__doc__ = "Taken at each edge, beyond its old seam line (mm)"
TakeIn.taken.__doc__ = "Taken at all edges together (mm)"
TakeIn.leftover.__doc__ = "Left for darts or the centre back (mm)"
TakeIn.doubts.__doc__ = "Doubts raised (bits)"


Tiers = namedtuple("Tiers", ["flats", "hem", "ratio", "strip", "doubts"], module="recloth")
Tiers.__doc__ = "Tiers, each gathered to the one above."
Tiers.flats.__doc__ = "way round each tier before gathering (mm)"
Tiers.hem.__doc__ = "Way round the last tier, which is the hem (mm)"
Tiers.ratio.__doc__ = "Hem over the top edge"
Tiers.strip.__doc__ = "All tiers together, as one strip (mm)"
Tiers.doubts.__doc__ = "`GATHERS_SCANT` when any tier is gathered by less than 1.2, `GATHERS_LARGE` by more than 4 (bits)"


ToleranceStack = namedtuple("ToleranceStack", ["worst", "likely"], module="recloth")
ToleranceStack.__doc__ = "How far a row of equal seams may be off."
ToleranceStack.worst.__doc__ = "When every error falls the same way (mm)"
ToleranceStack.likely.__doc__ = "When they fall by chance: the root of the sum of their squares (mm)"


ToleranceStackList = namedtuple("ToleranceStackList", ["worst", "likely", "largest", "largest_part"], module="recloth")
ToleranceStackList.__doc__ = "How far a set of unlike terms may be off."
ToleranceStackList.worst.__doc__ = "When every error falls the same way (mm)"
ToleranceStackList.likely.__doc__ = "When they fall by chance: the root of the sum of their squares (mm)"
ToleranceStackList.largest.__doc__ = "Index of the term that adds most, of equals the first"
ToleranceStackList.largest_part.__doc__ = "What that term adds to the worst case (mm)"


Trilaterate = namedtuple("Trilaterate", ["along", "across", "along_per_mm", "across_per_mm", "doubts"], module="recloth")
Trilaterate.__doc__ = "A point measured by tape from both ends of a base, and how sure it is."
Trilaterate.along.__doc__ = "From the start along the base, negative behind the start (mm)"
Trilaterate.across.__doc__ = "Square to the base (mm)"
Trilaterate.along_per_mm.__doc__ = "How far along the base the point moves at worst, for each mm that both readings are off"
Trilaterate.across_per_mm.__doc__ = "How far across the base the point moves at worst, for each mm that both readings are off"
Trilaterate.doubts.__doc__ = "`TRIANGLE_FLAT` when `across_per_mm` passes 5, `TRIANGLE_TALL` when `along_per_mm` does (bits)"


Tucks = namedtuple("Tucks", ["flat", "taken_up", "fold_pitch", "gap", "margin", "doubts"], module="recloth")
Tucks.__doc__ = "A set of equal tucks."
Tucks.flat.__doc__ = "Width before tucking, without allowances (mm)"
Tucks.taken_up.__doc__ = "Cloth that all tucks take up (mm)"
Tucks.fold_pitch.__doc__ = "From fold line to fold line on the flat cloth (mm)"
Tucks.gap.__doc__ = "What shows between a tuck's fold and the next one's stitching; 0 for blind tucks (mm)"
Tucks.margin.__doc__ = "Width left beside the first and the last stitching, together (mm)"
Tucks.doubts.__doc__ = "`PLEATS_OVERLAP` when tucks lie over each other (bits)"


TurnThrough = namedtuple("TurnThrough", ["diameter", "least_opening", "spare"], module="recloth")
TurnThrough.__doc__ = "A bundle of cloth that is to pass through an opening."
TurnThrough.diameter.__doc__ = "Diameter of the bundle (mm)"
TurnThrough.least_opening.__doc__ = "Least flat width of an opening that it passes (mm)"
TurnThrough.spare.__doc__ = "What the opening is wider than that; negative when the bundle does not pass (mm)"


TurnedHem = namedtuple("TurnedHem", ["allowance", "cut_length"], module="recloth")
TurnedHem.__doc__ = "Cloth for a turned hem."
TurnedHem.allowance.__doc__ = "Hem allowance, from the finished edge to the raw edge (mm)"
TurnedHem.cut_length.__doc__ = "Length to cut, with that allowance and no other (mm)"


VNeck = namedtuple("VNeck", ["edge", "off_grain_deg", "stay"], module="recloth")
VNeck.__doc__ = "One side of a V neck."
VNeck.edge.__doc__ = "Length of the straight edge on one side (mm)"
VNeck.off_grain_deg.__doc__ = "Angle of the edge from the grain that runs down the middle (deg)"
VNeck.stay.__doc__ = "Length of the tape that stays the edge on one side (mm)"


Washes = namedtuple("Washes", ["after", "change_pct", "doubts"], module="recloth")
Washes.__doc__ = "Cloth after several washes."
Washes.after.__doc__ = "Length after all washes (mm)"
Washes.change_pct.__doc__ = "Change from the first length to the last (%)"
Washes.doubts.__doc__ = "Doubts raised (bits)"


WearingEase = namedtuple("WearingEase", ["low", "high", "garment_low", "garment_high", "doubts"], module="recloth")
WearingEase.__doc__ = "Ease that authors give, from the least of them to the most."
WearingEase.low.__doc__ = "The least that an author gives, all round (mm)"
WearingEase.high.__doc__ = "The most that an author gives, all round (mm)"
WearingEase.garment_low.__doc__ = "Finished girth with the least (mm)"
WearingEase.garment_high.__doc__ = "Finished girth with the most (mm)"
WearingEase.doubts.__doc__ = "Doubts raised (bits)"


WidthConversion = namedtuple("WidthConversion", ["by_area", "low", "high", "doubts"], module="recloth")
WidthConversion.__doc__ = "A length of cloth turned into one of another width: a range, for a layout does not scale."
WidthConversion.by_area.__doc__ = "Length of the same area (mm)"
WidthConversion.low.__doc__ = "Least that the printed tables give, 0.9 times the area's (mm)"
WidthConversion.high.__doc__ = "Most that the printed tables give, 1.12 times the area's (mm)"
WidthConversion.doubts.__doc__ = "Doubts raised (bits)"


WrapSkirt = namedtuple("WrapSkirt", ["back_waist", "back_hip", "front_waist", "front_hip", "waist_edge", "wrap_pct", "doubts"], module="recloth")
WrapSkirt.__doc__ = "Widths of a wrap skirt's parts."
WrapSkirt.back_waist.__doc__ = "Back at the waist, side seam to side seam (mm)"
WrapSkirt.back_hip.__doc__ = "Back at the hip (mm)"
WrapSkirt.front_waist.__doc__ = "Each front at the waist, side seam to its finished edge (mm)"
WrapSkirt.front_hip.__doc__ = "Each front at the hip (mm)"
WrapSkirt.waist_edge.__doc__ = "Waist edge of all three parts, which is the length of its band without ties (mm)"
WrapSkirt.wrap_pct.__doc__ = "How far each front reaches past the centre line, as a share of half a front (%)"
WrapSkirt.doubts.__doc__ = "Doubts raised (bits)"


Xyz = namedtuple("Xyz", ["x", "y", "z"], module="recloth")
Xyz.__doc__ = "A colour by its tristimulus values; white has a `y` of 1."
Xyz.x.__doc__ = "X"
Xyz.y.__doc__ = "Y, the luminance: share of the white's"
Xyz.z.__doc__ = "Z"


ZigzagButtonhole = namedtuple("ZigzagButtonhole", ["length", "width", "stitches"], module="recloth")
ZigzagButtonhole.__doc__ = "A buttonhole worked in zigzag by machine."
ZigzagButtonhole.length.__doc__ = "Length over all, bars included (mm)"
ZigzagButtonhole.width.__doc__ = "Width over all (mm)"
ZigzagButtonhole.stitches.__doc__ = "Stitches of the two sides together"


ZipLength = namedtuple("ZipLength", ["needed", "buy", "shorten", "top_stop", "bottom_stop"], module="recloth")
ZipLength.__doc__ = "A zip for an opening."
ZipLength.needed.__doc__ = "Length needed, top stop to bottom stop (mm)"
ZipLength.buy.__doc__ = "Length to buy, the next that is sold (mm)"
ZipLength.shorten.__doc__ = "What that is too long, to be taken off by a new bottom stop (mm)"
ZipLength.top_stop.__doc__ = "Top stop from the raw edge at the top (mm)"
ZipLength.bottom_stop.__doc__ = "Bottom stop from the raw edge at the top (mm)"


def arc_from_rise(chord, rise):
    """Radius and length of the curve that rises so far over its chord.

    `radius = (chord² / 4 + rise²) / (2 · rise)`, angle `4 · atan(2 · rise / chord)`, length their product. For a waist,
    hem or yoke edge on a panel there is: lay a ruler across its ends and measure the rise in the middle, where the curve
    is near enough an arc. A rise above half the chord is more than a half ring.

    Parameters
    ----------
    chord : array_like
        straight from end to end (mm, 1 to 100000)
    rise : array_like
        height of the curve over the chord's middle (mm, 0.1 to 100000)

    Returns
    -------
    radius : float
        Radius of the arc (mm)
    length : float
        Length along the arc (mm)
    angle_deg : float
        Angle from end to end, seen from the centre (deg)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Plane geometry. *The Practical Designer*, women's volume, Rosenfeld 1918, lesson 73 has a waist so drafted; see
    `tests/vectors/arc_from_rise.csv`.

    Example: arc_from_rise(chord=317.5, rise=38.1) gives radius 349.783, length 329.565, angle_deg 53.98
    """
    if type(chord) is float and type(rise) is float:
        return _new(ArcFromRise, _core.one_arc_from_rise(chord, rise))
    return _call.scalars("arc_from_rise", ArcFromRise, ("chord", "rise",), (chord, rise,))


def assistant_volume(mass_g, ratio, grams, stock_pct):
    """Volume of a stock solution for so many grams in a litre of bath.

    `stock = mass · ratio · grams / (10 · stock_pct)`: salt, soda and other assistants go by the bath, not by the goods. Usual
    are up to 100 g of salt; more than 150 g in a litre, and a stock outside 0.05 to 50, are doubted.

    Parameters
    ----------
    mass_g : array_like
        dry mass of the goods (g, 0.01 to 1000000)
    ratio : array_like
        liquor to goods, by mass (1 to 200)
    grams : array_like
        grams in a litre of bath (0 to 500)
    stock_pct : array_like
        grams in 100 ml of the stock (%, 0.001 to 100)

    Returns
    -------
    stock_ml : float
        Stock solution to measure out (ml)
    amount_g : float
        What that holds (g)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: R. Sohel, textile calculation pages, 2014-12 and 2015-01. Where doubts begin: common practice, no source.

    Example: assistant_volume(mass_g=5, ratio=10, grams=20, stock_pct=25) gives stock_ml 4, amount_g 1, doubts 0, cautions 7
    """
    if type(mass_g) is float and type(ratio) is float and type(grams) is float and type(stock_pct) is float:
        return _new(StockVolume, _core.one_assistant_volume(mass_g, ratio, grams, stock_pct))
    return _call.scalars("assistant_volume", StockVolume, ("mass_g", "ratio", "grams", "stock_pct",), (mass_g, ratio, grams, stock_pct,))


def available_chlorine(naocl_pct, specific_gravity=1.1):
    """Available chlorine of bleach from the sodium hypochlorite on its label.

    `available = NaOCl · 70.906 / 74.442`. Labels mix three percentages: sodium hypochlorite by mass, available chlorine by
    mass, and grams of available chlorine in 100 ml; a bottle marked 10 or 12.5 usually means the last. Which one a label
    means changes the answer by up to a fifth. A public health table that takes 5 % hypochlorite as 5 % available chlorine
    is 5 % off, on purpose. Bleach weakens in store: an old bottle is weaker than its label, never stronger. Outside 1 to
    15 % the strength is doubted: 0.05 may be a share for 5 %.

    Parameters
    ----------
    naocl_pct : array_like
        sodium hypochlorite by mass (%, 0.1 to 20)
    specific_gravity : array_like, default 1.1
        mass of a millilitre of it (g) (1 to 1.3)

    Returns
    -------
    available_pct : float
        Available chlorine by mass (%)
    trade_pct : float
        Available chlorine in grams in 100 ml, which the trade also calls percent (%)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Molar masses of Cl2 and NaOCl. *Handbook of Chlorination*, Van Nostrand Reinhold 1972, after a supplier's product
    profile (trade percent). A specific gravity of 1.1: a worked example on a pool-chemistry forum. Bottles of 1 to 15 %:
    common practice, no source.

    Example: available_chlorine(naocl_pct=5.25, specific_gravity=1.1) gives available_pct 5.0006, doubts 0, cautions 113
    """
    if type(naocl_pct) is float and type(specific_gravity) is float:
        return _new(AvailableChlorine, _core.one_available_chlorine(naocl_pct, specific_gravity))
    return _call.scalars("available_chlorine", AvailableChlorine, ("naocl_pct", "specific_gravity",), (naocl_pct, specific_gravity,))


def batches(masses_g, vessel_ml, ratio, fill=0.75):
    """Which garment goes into which bath, when one vessel does not hold all.

    The vessel takes `vessel · fill / ratio` of dry goods. The heaviest garment is placed first, each into the first bath
    with room (first fit decreasing); where `batches` is `least`, no sharing out needs fewer. A garment is never split, and
    pieces that are to be one garment belong into one bath: give them as one mass. Two baths seldom match in shade.

    Parameters
    ----------
    masses_g : sequence of float
        dry mass of each garment (g, 0.01 to 1000000, 1 to 100 items)
    vessel_ml : float
        what the vessel holds to the brim (ml, 1 to 100000000)
    ratio : float
        liquor to goods, by mass (1 to 200)
    fill : float, default 0.75
        part of the vessel filled with liquor; the rest is goods and room to stir (0.1 to 1)

    Returns
    -------
    numbers : array
        number of each garment's bath, from 1
    batches : int
        Baths needed, shared out as given
    least : int
        Fewest that any sharing out could need, by total mass
    capacity_g : float
        Most that the vessel takes at once (g)
    heaviest_g : float
        Heaviest bath (g)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange` or `Count`, naming the argument; `Room` when `numbers` is too short. `NoSolution` naming
        `vessel_ml` when it does not take the heaviest garment; its `min` is the least vessel that would.

    Notes
    -----
    Source: Arithmetic; first fit decreasing is a usual method. Three quarters full is common practice, no source.

    Example: batches(masses_g=[170, 380, 120, 200], vessel_ml=12000, ratio=18, fill=0.75) gives numbers 2 1 1 2, batches 2, least 2, capacity_g 500, heaviest_g 500, doubts 0, cautions 517
    """
    masses_g = _numbers.list_of(masses_g, "batches", "masses_g")
    vessel_ml = _numbers.number(vessel_ml, "batches", "vessel_ml")
    ratio = _numbers.number(ratio, "batches", "ratio")
    fill = _numbers.number(fill, "batches", "fill")
    return _new(Batches, _core.one_batches(masses_g, vessel_ml, ratio, fill))


def bath_volume(mass_g, ratio):
    """Volume of a bath from the dry mass of goods and the liquor ratio.

    `volume = mass · ratio`, a litre of liquor taken as a kilogram: 20 is 20 litres a kilogram, often written 1:20. The
    vessel must hold more than this: the goods, and room to stir.

    Parameters
    ----------
    mass_g : array_like
        dry mass of the goods (g, 0.01 to 1000000)
    ratio : array_like
        liquor to goods, by mass (1 to 200)

    Returns
    -------
    volume_ml : float
        Volume of liquor (ml)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: R. Sohel, textile calculation pages, 2015 (5 g at 1:10 is 50 ml). The doubt's 3 to 40: the smallest ratio of an
    equipment page and above the largest home recipe seen (37.6); common practice.

    Example: bath_volume(mass_g=380, ratio=20) gives volume_ml 7600, doubts 0, cautions 5
    """
    if type(mass_g) is float and type(ratio) is float:
        return _new(BathVolume, _core.one_bath_volume(mass_g, ratio))
    return _call.scalars("bath_volume", BathVolume, ("mass_g", "ratio",), (mass_g, ratio,))


def bias_along_selvedge(width):
    """Distance along the selvedge between the cuts of a true bias strip.

    A strip of width `w`, measured square to its edges, lies at 45° to the selvedge and meets it over `w · √2`. The old
    rule of a third more comes out 6 % short.

    Parameters
    ----------
    width : array_like
        width of the strip, square to its edges (mm, 0.1 to 100000)

    Returns
    -------
    float
        Distance along the selvedge, and equally across the cloth (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: L. I. Baldt, *Clothing for Women*, 1916, ch. XXII, table of measures along the selvage: every row within 0.08 in.

    Example: bias_along_selvedge(width=100) gives 141.42
    """
    if type(width) is float:
        return _core.one_bias_along_selvedge(width)
    return _call.scalars("bias_along_selvedge", None, ("width",), (width,))


def bias_square(length, width):
    """Side of the square of cloth that holds a bias strip of a given length and width.

    `side = √(length · width)`: the strip's area as a square, which the continuous tube comes near to. It is the least:
    add 25 to 50 mm (1 to 2 in) for the seams, more if the strip is pieced from separate strips.

    Parameters
    ----------
    length : array_like
        length of strip needed, joins included (mm, 1 to 10000000)
    width : array_like
        cut width of the strip, square to its edges (mm, 0.1 to 10000, <= length)

    Returns
    -------
    float
        Side of the square, without seams (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `width` when it is more than the length: the
        two are swapped.

    Notes
    -----
    Source: Equal areas. `tests/vectors/bias_square.csv` has published and hand-worked rows.

    Example: bias_square(length=4000, width=40) gives 400
    """
    if type(length) is float and type(width) is float:
        return _core.one_bias_square(length, width)
    return _call.scalars("bias_square", None, ("length", "width",), (length, width,))


def bias_strip_length(side, width):
    """Length of bias strip that a square of cloth gives.

    `length = side² / width`, the other way of `bias_square`. It is the most: seams and end triangles take from it (72
    in by the sum, a 12 in square has given about 60 in of 2 in strip). Take the seams' allowances off the side first.

    Parameters
    ----------
    side : array_like
        side of the square, less its seams (mm, 1 to 100000)
    width : array_like
        cut width of the strip, square to its edges (mm, 0.1 to 10000, <= side)

    Returns
    -------
    float
        Length of the strip, at most (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `width` when it is more than the side.

    Notes
    -----
    Source: Equal areas. `tests/vectors/bias_strip_length.csv` has published rows.

    Example: bias_strip_length(side=400, width=40) gives 4000
    """
    if type(side) is float and type(width) is float:
        return _core.one_bias_strip_length(side, width)
    return _call.scalars("bias_strip_length", None, ("side", "width",), (side, width,))


def bias_strips(length, width, strip, allowance=6.0, shortest=100.0):
    """Strips that a rectangle gives when it is cut across at 45°, and their length when joined.

    The first cut runs from a corner, and the others lie `strip · √2` apart along the selvedge to both sides of it. Between the
    two corners' cuts the strips are full, `√2` times the shorter side; in the two end triangles each is shorter than the one
    before. Strips shorter than `shortest`, or than a join takes, are left out. Ends are cut on the straight grain, and each
    join takes `2 · √2 · allowance` along the strip. Fewer, longer pieces come from `bias_tube`.

    Parameters
    ----------
    length : array_like
        one side of the rectangle, on grain (mm, 10 to 100000)
    width : array_like
        the other side (mm, 10 to 100000)
    strip : array_like
        width of a strip, square to its edges (mm, 1 to 10000)
    allowance : array_like, default 6
        seam allowance at each join (mm, 0 to 100)
    shortest : array_like, default 100
        shortest strip worth joining (mm, 0 to 100000)

    Returns
    -------
    strips : int
        Number of strips
    longest : float
        Length of the longest, along its shorter edge (mm)
    joined : float
        All strips joined on the straight grain, what the joins take left off (mm)
    kept_pct : float
        Share of the cloth in them before joining (%)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `strip` when the cloth holds none so wide; naming
        `allowance` when a join takes the longest strip; naming `shortest` when no strip is as long as that, with the longest as
        `max`.

    Notes
    -----
    Source: Plane geometry. `tests/vectors/bias_strips.csv` has published and hand-worked rows: a tutorial gets about 60 in of 2 in strips
    from a 12 in square, where its area would give 72.

    Example: bias_strips(length=700, width=300, strip=40, allowance=6, shortest=100) gives strips 15, longest 424.26, joined 4549.1
    """
    if type(length) is float and type(width) is float and type(strip) is float and type(allowance) is float and type(shortest) is float:
        return _new(BiasStrips, _core.one_bias_strips(length, width, strip, allowance, shortest))
    return _call.scalars("bias_strips", BiasStrips, ("length", "width", "strip", "allowance", "shortest",), (length, width, strip, allowance, shortest,))


def bias_tube(length, width, strip, allowance=6.0):
    """One long bias strip from a rectangle sewn to a slanted tube.

    A corner is cut off at 45° and sewn to the other end; the slanted piece is marked in strips, its long sides are sewn
    together one strip out of step, and the spiral is cut. Both seams cross every turn on the straight grain. The first seam
    takes two allowances of the long side, the second two of the short: `turns = floor((long - 2 · allowance) / (strip · √2))`,
    `length = turns · (short - 2 · allowance) · √2`. Area alone, `long · short / strip`, promises up to one turn more.

    Parameters
    ----------
    length : array_like
        one side of the rectangle, on grain (mm, 10 to 100000)
    width : array_like
        the other side (mm, 10 to 100000)
    strip : array_like
        width of the strip, square to its edges (mm, 1 to 10000)
    allowance : array_like, default 6
        allowance of both seams (mm, 0 to 100)

    Returns
    -------
    turns : int
        Turns of the strip round the tube
    length : float
        Length of the strip (mm)
    leftover : float
        What is left over along the long side, less than one turn (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `allowance` when it takes the short side; naming `strip`
        when not one turn is had.

    Notes
    -----
    Source: Plane geometry. A tutorial counts area, and only one allowance off each side: 22 in square, 3 in strips, 1/4 in: 157.7 in,
    where five whole turns give 152. `tests/vectors/bias_tube.csv` has published and hand-worked rows.

    Example: bias_tube(length=700, width=300, strip=40, allowance=6) gives turns 12, length 700, leftover 9.18
    """
    if type(length) is float and type(width) is float and type(strip) is float and type(allowance) is float:
        return _new(BiasTube, _core.one_bias_tube(length, width, strip, allowance))
    return _call.scalars("bias_tube", BiasTube, ("length", "width", "strip", "allowance",), (length, width, strip, allowance,))


def binder_solids(low_pct, high_pct, parts_water, pick_up_pct, dips):
    """Solids that dips in a diluted binder, such as soymilk, leave on the cloth, as a range.

    `bath = solids / (1 + parts)`; each dip, dried between, leaves `bath · pick_up / 100` on weight of fibre. Homemade soymilk
    holds about 10 % of bean, bought 3 to 6 % of solids: the two are not the same measure, so read the label. A binder of
    food goes off: make it fresh, keep it cool, throw it away when it smells, and tell those who have an allergy to it. Solids
    outside 0.1 to 20 % and a pick-up below 10 % are doubted.

    Parameters
    ----------
    low_pct : array_like
        solids of the binder undiluted, least (%, 0.01 to 50)
    high_pct : array_like
        solids of the binder undiluted, most (%, 0.01 to 50, >= low_pct)
    parts_water : array_like
        parts of water to one of binder (0 to 100)
    pick_up_pct : array_like
        liquor held after wringing, on dry mass (%, 1 to 500)
    dips : array_like of int
        dips, dried between (1 to 50)

    Returns
    -------
    bath_low_pct : float
        Solids in the diluted binder, least (%)
    bath_high_pct : float
        Solids in the diluted binder, most (%)
    owf_low_pct : float
        Solids on weight of fibre after all dips, least (%)
    owf_high_pct : float
        Solids on weight of fibre after all dips, most (%)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `high_pct` when it is less than `low_pct`.

    Notes
    -----
    Source: Arithmetic. Strengths and 1 part to 5 of water: vickifearon.com; rachelbakewell; tondro.com, 2009. Where doubts begin:
    common practice, no source.

    Example: binder_solids(low_pct=3, high_pct=6, parts_water=5, pick_up_pct=90, dips=4) gives bath_low_pct 0.5, bath_high_pct 1, owf_low_pct 1.8, owf_high_pct 3.6, doubts 0, cautions 1
    """
    if type(low_pct) is float and type(high_pct) is float and type(parts_water) is float and type(pick_up_pct) is float and type(dips) is int:
        return _new(BinderSolids, _core.one_binder_solids(low_pct, high_pct, parts_water, pick_up_pct, dips))
    return _call.scalars("binder_solids", BinderSolids, ("low_pct", "high_pct", "parts_water", "pick_up_pct", "dips",), (low_pct, high_pct, parts_water, pick_up_pct, dips,))


def binding_length(edge, corners=0, corner=50.8, finish=203.2):
    """Length of binding for an edge, with what its corners and its two ends take.

    `length = edge + corners · corner + finish`. A corner turned outward with a mitre takes, by the geometry of its fold, no
    more than the edge itself; what makers allow is for handling and for a fold that is sewn over. One tutorial allows about
    16 in over the perimeter of a square for everything; the defaults are that, shared 2 in to a corner and 8 in to the two
    ends, a share of ours. A neck or an armhole has no corners and takes two allowances to finish. How many strips give the
    length, with what each join loses: `binding_strips`.

    Parameters
    ----------
    edge : array_like
        length of the edge to be bound (mm, 1 to 1000000)
    corners : array_like of int, default 0
        corners to be mitred (0 to 1000)
    corner : array_like, default 50.8
        allowed for each of them (mm, 0 to 1000)
    finish : array_like, default 203.2
        for joining or finishing the two ends (mm, 0 to 10000)

    Returns
    -------
    float
        Length of binding (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic; quiltingboard.com, post 8276918 (64 in square: 256 in and about 16). `tests/vectors/binding_length.csv`.

    Example: binding_length(edge=6502.4, corners=4, corner=50.8, finish=203.2) gives 6908.8
    """
    if type(edge) is float and type(corner) is float and type(finish) is float and type(corners) is int:
        return _core.one_binding_length(edge, corners, corner, finish)
    return _call.scalars("binding_length", None, ("edge", "corners", "corner", "finish",), (edge, corners, corner, finish,))


def binding_strips(length, strip, join=0.0):
    """Number of strips of one length to join for a binding.

    Each join takes `join` off the two strips together: `count` is the least with
    `count · strip - (count - 1) · join >= length`. Strips with square ends, crossed and joined from corner to corner at 45°,
    lose their own width at each join; with ends cut at 45°, √2 times the two allowances; joined end to end, the two
    allowances.

    Parameters
    ----------
    length : array_like
        length of binding needed, corners and ends included (mm, 1 to 1000000)
    strip : array_like
        length of each strip, measured along one edge (mm, 10 to 100000)
    join : array_like, default 0
        length lost at each join (mm, 0 to 10000, < strip)

    Returns
    -------
    count : int
        Number of strips
    spare : float
        What the joined strips are longer than needed (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `join` when it takes a whole strip, or so much
        that more than 100000 strips are needed.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/binding_strips.csv` has published and hand-worked rows.

    Example: binding_strips(length=3000, strip=900, join=50) gives count 4, spare 450
    """
    if type(length) is float and type(strip) is float and type(join) is float:
        return _new(BindingStrips, _core.one_binding_strips(length, strip, join))
    return _call.scalars("binding_strips", BindingStrips, ("length", "strip", "join",), (length, strip, join,))


def binding_width(finished, turn, thickness=0.0, fold="single"):
    """Width to cut a binding of a given finished width.

    Single: `2 · finished + 2 · turn + thickness`. Double: `2 · (2 · finished + turn + thickness)`. With a turn as wide as
    the binding shows these are the 4 and 6 times that are usually told. Bias narrows when it is stretched on: try a
    short piece.

    Parameters
    ----------
    finished : array_like
        width that shows on one side (mm, 0.5 to 1000)
    turn : array_like
        single: turned in at each long edge; double: seam allowance (mm, 0 to 1000)
    thickness : array_like, default 0
        way round the edge itself: the thickness of what is bound (mm, 0 to 100)
    fold : BindingFold, default "single"
        how it is folded

    Returns
    -------
    float
        Width to cut (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: The layers added up; 4 and 6 times are common practice, no source. `tests/vectors/binding_width.csv` has hand-worked
    rows.

    Example: binding_width(finished=8, turn=8, thickness=0, fold='single') gives 32
    """
    fold = _call.choice(BindingFold, fold, "binding_width", "fold")
    if type(finished) is float and type(turn) is float and type(thickness) is float:
        return _core.one_binding_width(finished, turn, thickness, fold)
    return _call.scalars("binding_width", None, ("finished", "turn", "thickness", "fold",), (finished, turn, thickness, fold,))


def bleach_dilution(volume_ml, target_pct, stock_pct, minutes, fibre, finish, swatch, in_bath):
    """Bleach and water for a bath of a given strength, for a given cloth and time.

    `bleach = volume · target / stock`, both as available chlorine. "1 : 100" in public health tables is 1 part in 100, that
    is 1 + 99. The bleach goes into the cold water. A bath is made for a time: `minutes` is how long the goods may stay in
    at most, by the product's label and by your swatch, and sooner when the colour is reached. Test first: 15 ml bleach in
    60 ml water on a hidden seam for a minute, or better a row of timed swatches (`bleach_time`).

    Usual are a target up to 0.46 %, a bottle of 1 to 15 %, up to 30 minutes and at least 50 ml; beyond that there are doubts.

    Parameters
    ----------
    volume_ml : array_like
        volume of the bath (ml, 1 to 1000000)
    target_pct : array_like
        available chlorine wanted (%, 0.001 to 0.6, <= stock_pct)
    stock_pct : array_like
        available chlorine of the bottle (%, 0.1 to 20)
    minutes : array_like
        longest that the goods stay in (min, 0.1 to 60)
    fibre : Fibre
        the most delicate fibre in the goods, thread and trims included
    finish : Finish
        what was done to the cloth
    swatch : Swatch
        how a swatch stood the same bath
    in_bath : InBath
        what else is in the bath

    Returns
    -------
    bleach_ml : float
        Bleach from the bottle (ml)
    water_ml : float
        Cold water it is added to (ml)
    parts_water : float
        Parts of water to one of bleach
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `target_pct` when the bottle is weaker. `Refused`
        naming `in_bath` for anything but water; naming `fibre`, `finish` or `swatch` for what bleach ruins, and for the
        unknown until a swatch has passed.

    Notes
    -----
    Source: WHO, *Infection Prevention and Control of Epidemic- and Pandemic-Prone Acute Respiratory Infections in Health Care*,
    2014, Annex G (dilution; 30 minutes of immersion, above which there is a doubt). Northwestern Health Unit, Ontario
    (everyday strengths: 0.01 to 0.45 %). Test on a hidden seam: a supplier's laundry sheet. Bottles of 1 to 15 %: common
    practice, no source.

    Example: bleach_dilution(volume_ml=10000, target_pct=0.05, stock_pct=5, minutes=10, fibre='linen', finish='plain', swatch='passed', in_bath='water_only') gives bleach_ml 100, water_ml 9900, parts_water 99, doubts 0, cautions 113
    """
    fibre = _call.choice(Fibre, fibre, "bleach_dilution", "fibre")
    finish = _call.choice(Finish, finish, "bleach_dilution", "finish")
    swatch = _call.choice(Swatch, swatch, "bleach_dilution", "swatch")
    in_bath = _call.choice(InBath, in_bath, "bleach_dilution", "in_bath")
    if type(volume_ml) is float and type(target_pct) is float and type(stock_pct) is float and type(minutes) is float:
        return _new(BleachDilution, _core.one_bleach_dilution(volume_ml, target_pct, stock_pct, minutes, fibre, finish, swatch, in_bath))
    return _call.scalars("bleach_dilution", BleachDilution, ("volume_ml", "target_pct", "stock_pct", "minutes", "fibre", "finish", "swatch", "in_bath",), (volume_ml, target_pct, stock_pct, minutes, fibre, finish, swatch, in_bath,))


def bleach_time(times_min, shades, target, limit_min, fibre, finish, swatch, in_bath, floor=0.0):
    """Time in the bleach to a wanted depth of shade, from swatches taken out at known times.

    The shade, K/S (`k_over_s`), is taken to fall to a floor by a constant share a minute:
    `ln(shade - floor)` is a straight line in time, fitted by least squares. Swatches of the same cloth, in the same
    strength and warmth, rinsed, neutralised and dried before they are judged. `swatch` tells how they stood it: pull each
    one wet; at the first weakness stop, whatever the colour. A time beyond the longest swatch is a guess: test it. A shade at
    or below the floor will not be reached at all: choose to dye over it.

    Parameters
    ----------
    times_min : sequence of float
        time of each swatch, rising; 0 is not bleached (min, 0 to 60, 2 to 50 items)
    shades : sequence of float
        depth of shade K/S of each (0.001 to 500, as many as times_min)
    target : float
        depth of shade wanted (0.001 to 500)
    limit_min : float
        longest time that the product's label allows (min, 0.1 to 60)
    fibre : Fibre
        the most delicate fibre in the goods
    finish : Finish
        what was done to the cloth
    swatch : Swatch
        how the swatches stood it, pulled wet
    in_bath : InBath
        what else is in the bath
    floor : float, default 0
        depth of shade that bleach does not take away (0 to 500)

    Returns
    -------
    time_min : float
        Time to the shade wanted (min)
    next_swatch_min : float
        Time for the next swatch: the time found, but never more than twice the longest swatch (min)
    rate : float
        Share of the way to the floor gone in a minute, as a rate: the shade falls by e^-rate
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange` or `Count`, naming the argument. `Refused` as for `bleach_dilution`, and naming `swatch`
        unless the swatches have passed. `NoSolution` naming `times_min` (not rising), `shades` (at or below the floor, or not
        falling), `target` (at or below the floor; or not reached within `limit_min`, `min` being the shade reached then).

    Notes
    -----
    Source: First-order fading, fitted to the user's own swatches. WHO 2014, Annex G: 30 minutes of immersion; a time or a swatch
    longer than that is doubted.

    Example: bleach_time(times_min=[0, 10], shades=[4, 2.4], target=1, limit_min=30, fibre='linen', finish='plain', swatch='passed', in_bath='water_only', floor=0) gives time_min 27.1, next_swatch_min 20, rate 0.0511, doubts 0, cautions 369
    """
    times_min = _numbers.list_of(times_min, "bleach_time", "times_min")
    shades = _numbers.list_of(shades, "bleach_time", "shades")
    target = _numbers.number(target, "bleach_time", "target")
    limit_min = _numbers.number(limit_min, "bleach_time", "limit_min")
    fibre = _call.choice(Fibre, fibre, "bleach_time", "fibre")
    finish = _call.choice(Finish, finish, "bleach_time", "finish")
    swatch = _call.choice(Swatch, swatch, "bleach_time", "swatch")
    in_bath = _call.choice(InBath, in_bath, "bleach_time", "in_bath")
    floor = _numbers.number(floor, "bleach_time", "floor")
    return _new(BleachTime, _core.one_bleach_time(times_min, shades, target, limit_min, fibre, finish, swatch, in_bath, floor))


def body_length_doubts(length):
    """Doubts on a length of the body: back length, shoulder, sleeve, skirt.

    Below 100 mm (`BODY_LENGTH_SMALL`) it is likely in centimetres or inches; above 2000 mm (`BODY_LENGTH_LARGE`) it is
    longer than a tall person. A length over 100 cm given in centimetres passes unseen.

    Parameters
    ----------
    length : array_like
        a length of the body (mm, 1 to 100000)

    Returns
    -------
    int
        The doubts (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Thresholds are common practice, no source, set outside the 5th percentile of women's shoulder length, 120 mm, and the
    95th of men's stature, 1870 mm, in Gordon et al., *2012 Anthropometric Survey of U.S. Army Personnel*,
    NATICK/TR-15/007, 2014.

    Example: body_length_doubts(length=424.5) gives 0
    """
    if type(length) is float:
        return _core.one_body_length_doubts(length)
    return _call.scalars("body_length_doubts", None, ("length",), (length,))


def box_pleats(finished, count, depth):
    """Cloth for box pleats, or inverted ones, of a given number and depth.

    A box pleat is two knife pleats folded away from each other, an inverted pleat two folded towards each other: the same
    cloth seen from its two faces. `flat = finished + 4 · count · depth`. The folds meet behind a box pleat when `depth` is
    half of `show`, and then the cloth is three times the width. The four functions each find one of `flat`, `finished`,
    `count` and `depth`, as those of `knife_pleats` do.

    Parameters
    ----------
    finished : array_like
        width when pleated (mm, 1 to 1000000)
    count : array_like of int
        number of box or inverted pleats (1 to 1000)
    depth : array_like
        depth of each of a pleat's two folds (mm, 0.1 to 10000)

    Returns
    -------
    flat : float
        Width before pleating, without allowances (mm)
    finished : float
        Width when pleated (mm)
    count : int
        Number of pleats
    show : float
        Width from pleat to pleat (mm)
    depth : float
        Depth of each of a pleat's two folds (mm)
    intake : float
        Cloth that each pleat takes up, four times its depth (mm)
    taken_up : float
        Cloth that all pleats take up (mm)
    ratio : float
        Flat over finished: 3 where the folds just meet behind
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/box_pleats.csv` has hand-worked rows.

    Example: box_pleats(finished=720, count=12, depth=30) gives flat 2160, finished 720, count 12, show 60, depth 30, intake 120, taken_up 1440, ratio 3, doubts 0
    """
    if type(finished) is float and type(depth) is float and type(count) is int:
        return _new(BoxPleats, _core.one_box_pleats(finished, count, depth))
    return _call.scalars("box_pleats", BoxPleats, ("finished", "count", "depth",), (finished, count, depth,))


def box_pleats_count(flat, finished, depth):
    """Number of box pleats of at least a given depth that bring cloth there is to a width.

    The whole number that `(flat - finished) / (4 · depth)` holds, and then the depth at which they take up exactly what
    there is.

    Parameters
    ----------
    flat : array_like
        width before pleating, without allowances (mm, 1 to 100000000)
    finished : array_like
        width when pleated (mm, 1 to 1000000, < flat)
    depth : array_like
        least depth of each of a pleat's two folds (mm, 0.1 to 10000)

    Returns
    -------
    flat : float
        Width before pleating, without allowances (mm)
    finished : float
        Width when pleated (mm)
    count : int
        Number of pleats
    show : float
        Width from pleat to pleat (mm)
    depth : float
        Depth of each of a pleat's two folds (mm)
    intake : float
        Cloth that each pleat takes up, four times its depth (mm)
    taken_up : float
        Cloth that all pleats take up (mm)
    ratio : float
        Flat over finished: 3 where the folds just meet behind
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `finished` when nothing is left to pleat; naming
        `depth` when there is not enough for one pleat, or so much that there would be more than 1000.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/box_pleats_count.csv` has hand-worked rows.

    Example: box_pleats_count(flat=1500, finished=700, depth=30) gives flat 1500, finished 700, count 6, show 116.667, depth 30, intake 133.333, taken_up 800, ratio 2.143, doubts 0
    """
    if type(flat) is float and type(finished) is float and type(depth) is float:
        return _new(BoxPleats, _core.one_box_pleats_count(flat, finished, depth))
    return _call.scalars("box_pleats_count", BoxPleats, ("flat", "finished", "depth",), (flat, finished, depth,))


def box_pleats_depth(flat, finished, count):
    """Depth of a given number of box pleats that bring cloth there is to a width.

    `depth = (flat - finished) / (4 · count)`.

    Parameters
    ----------
    flat : array_like
        width before pleating, without allowances (mm, 1 to 100000000)
    finished : array_like
        width when pleated (mm, 1 to 1000000, < flat)
    count : array_like of int
        number of box or inverted pleats (1 to 1000)

    Returns
    -------
    flat : float
        Width before pleating, without allowances (mm)
    finished : float
        Width when pleated (mm)
    count : int
        Number of pleats
    show : float
        Width from pleat to pleat (mm)
    depth : float
        Depth of each of a pleat's two folds (mm)
    intake : float
        Cloth that each pleat takes up, four times its depth (mm)
    taken_up : float
        Cloth that all pleats take up (mm)
    ratio : float
        Flat over finished: 3 where the folds just meet behind
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `finished` when nothing is left to pleat.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/box_pleats_depth.csv` has hand-worked rows.

    Example: box_pleats_depth(flat=1500, finished=700, count=10) gives flat 1500, finished 700, count 10, show 70, depth 20, intake 80, taken_up 800, ratio 2.142857, doubts 0
    """
    if type(flat) is float and type(finished) is float and type(count) is int:
        return _new(BoxPleats, _core.one_box_pleats_depth(flat, finished, count))
    return _call.scalars("box_pleats_depth", BoxPleats, ("flat", "finished", "count",), (flat, finished, count,))


def box_pleats_finished(flat, count, depth):
    """Width to which a given number of box pleats brings cloth there is.

    `finished = flat - 4 · count · depth`.

    Parameters
    ----------
    flat : array_like
        width before pleating, without allowances (mm, 1 to 100000000)
    count : array_like of int
        number of box or inverted pleats (1 to 1000)
    depth : array_like
        depth of each of a pleat's two folds (mm, 0.1 to 10000)

    Returns
    -------
    flat : float
        Width before pleating, without allowances (mm)
    finished : float
        Width when pleated (mm)
    count : int
        Number of pleats
    show : float
        Width from pleat to pleat (mm)
    depth : float
        Depth of each of a pleat's two folds (mm)
    intake : float
        Cloth that each pleat takes up, four times its depth (mm)
    taken_up : float
        Cloth that all pleats take up (mm)
    ratio : float
        Flat over finished: 3 where the folds just meet behind
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `depth` when the pleats take up all the cloth.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/box_pleats_finished.csv` has hand-worked rows.

    Example: box_pleats_finished(flat=2160, count=12, depth=30) gives flat 2160, finished 720, count 12, show 60, depth 30, intake 120, taken_up 1440, ratio 3, doubts 0
    """
    if type(flat) is float and type(depth) is float and type(count) is int:
        return _new(BoxPleats, _core.one_box_pleats_finished(flat, count, depth))
    return _call.scalars("box_pleats_finished", BoxPleats, ("flat", "count", "depth",), (flat, count, depth,))


def breadths(flat, cloth_width, allowance=0.0):
    """Number of breadths of cloth that a ring of a given length takes.

    Each breadth gives its width less an allowance at both sides, and as many seams as breadths close the ring:
    `count = ceil(flat / (cloth_width - 2 · allowance))`.

    Parameters
    ----------
    flat : array_like
        way round before gathering or pleating (mm, 1 to 1000000)
    cloth_width : array_like
        width of the cloth, or length of each strip there is (mm, 1 to 100000)
    allowance : array_like, default 0
        seam allowance at each join (mm, 0 to 1000)

    Returns
    -------
    count : int
        Number of breadths, which is also the number of seams
    round : float
        Way round when all are joined at their full width (mm)
    spare : float
        What that is more than wanted: gather it in, or cut the last breadth narrower (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `allowance` when it takes the whole width, or so
        much that there would be more than 100000 breadths.

    Notes
    -----
    Source: Arithmetic. C. C. Ingalls, *Text-Book on Domestic Art*, 1911, "Kilted or Pleated Skirt" (4 yd round from 36 in cloth).

    Example: breadths(flat=3600, cloth_width=1400, allowance=10) gives count 3, round 4140, spare 540
    """
    if type(flat) is float and type(cloth_width) is float and type(allowance) is float:
        return _new(Breadths, _core.one_breadths(flat, cloth_width, allowance))
    return _call.scalars("breadths", Breadths, ("flat", "cloth_width", "allowance",), (flat, cloth_width, allowance,))


def button_diameter(lines):
    """Diameter of a button from its size in lines.

    A button line is the fortieth part of an inch: `diameter = 0.635 · lines`. It is not the watchmaker's line of
    2.26 mm, nor the eleventh of an inch by which hat ribbon is sold.

    Parameters
    ----------
    lines : array_like
        size of the button, in lines (1 to 1000)

    Returns
    -------
    float
        The diameter (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: US Tariff Act of 1922, 42 Stat. ch. 356, par. 1410: a line is one fortieth of an inch.

    Example: button_diameter(lines=22) gives 13.97
    """
    if type(lines) is float:
        return _core.one_button_diameter(lines)
    return _call.scalars("button_diameter", None, ("lines",), (lines,))


def button_for_hole(slit, thickness, start=3.0):
    """Largest flat button for a slit, and the creep of a cross hole.

    `diameter = slit - thickness`. The button sits at the end of a cross hole: a hole that is centred on the line instead
    of starting `start` beyond it lets the front out by `slit / 2 - start`. A hole that runs along the edge does not creep.

    Parameters
    ----------
    slit : array_like
        length of the slit (mm, 1 to 300)
    thickness : array_like
        thickness of the button at its thickest (mm, 0 to 100, < slit)
    start : array_like, default 3
        where a cross hole should start, past the line to the edge (mm, 0 to 300, <= slit)

    Returns
    -------
    diameter : float
        Largest diameter of a flat button (mm)
    creep : float
        How far the front is let out when a hole meant to start past the line is centred on it; negative lets it in (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `thickness` or `start` when it is not within the
        slit.

    Notes
    -----
    Source: The buttonhole rule backwards; start of 3 mm (1/8 in) by a sewing-machine manual, model 1288.
    `tests/vectors/button_for_hole.csv` has hand-worked rows.

    Example: button_for_hole(slit=22, thickness=3.5, start=3) gives diameter 18.5, creep 8
    """
    if type(slit) is float and type(thickness) is float and type(start) is float:
        return _new(ButtonForHole, _core.one_button_for_hole(slit, thickness, start))
    return _call.scalars("button_for_hole", ButtonForHole, ("slit", "thickness", "start",), (slit, thickness, start,))


def button_for_stand(extension, share=0.75):
    """Largest button for a stand there is.

    `button_stand` the other way: `diameter = extension / share`. An old front keeps its stand; a button larger than the
    stand allows hangs over the edge.

    Parameters
    ----------
    extension : array_like
        from the button line to the finished edge (mm, 1 to 600)
    share : array_like, default 0.75
        extension over diameter (0.5 to 3)

    Returns
    -------
    float
        Diameter of the button (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: As `button_stand`.

    Example: button_for_stand(extension=15, share=0.75) gives 20
    """
    if type(extension) is float and type(share) is float:
        return _core.one_button_for_stand(extension, share)
    return _call.scalars("button_for_stand", None, ("extension", "share",), (extension, share,))


def button_loop(diameter, thickness, cord, gap=0.0, stretch=0.0, seam=12.0, shape="flat"):
    """Loop of cord that just passes over a button.

    The way round the button is `P = 2 · (diameter + thickness)` for a flat one, `π · diameter` for a ball; the middle of
    the cord lies half its thickness further out all round, and its ends are sewn `gap` apart:
    `visible = (P + π · cord - gap) / (1 + stretch)`, `cut = visible + 2 · seam`. For a loop
    there is, see `loop_slack`. Try one before cutting all.

    Parameters
    ----------
    diameter : array_like
        diameter of the button (mm, 1 to 200)
    thickness : array_like
        thickness of a flat button; not used for a ball (mm, 0 to 100)
    cord : array_like
        thickness of the cord (mm, 0 to 50)
    gap : array_like, default 0
        between the loop's two ends where they are sewn (mm, 0 to 500)
    stretch : array_like, default 0
        how much the cord may stretch: 0.3 is 30 % (0 to 3)
    seam : array_like, default 12
        length into the seam at each end (mm, 0 to 200)
    shape : ButtonShape, default "flat"
        shape of the button

    Returns
    -------
    visible : float
        Length of the loop that shows (mm)
    cut : float
        Length to cut (mm)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `gap` when it is as wide as the way round.

    Notes
    -----
    Source: Plane geometry. `tests/vectors/button_loop.csv` has hand-worked rows. Any stretch raises the caution `ELASTIC_BATH`.

    Example: button_loop(diameter=10, thickness=3, cord=1.5, gap=4, stretch=0, seam=12, shape='flat') gives visible 26.71, cut 50.71, cautions 0
    """
    shape = _call.choice(ButtonShape, shape, "button_loop", "shape")
    if type(diameter) is float and type(thickness) is float and type(cord) is float and type(gap) is float and type(stretch) is float and type(seam) is float:
        return _new(ButtonLoop, _core.one_button_loop(diameter, thickness, cord, gap, stretch, seam, shape))
    return _call.scalars("button_loop", ButtonLoop, ("diameter", "thickness", "cord", "gap", "stretch", "seam", "shape",), (diameter, thickness, cord, gap, stretch, seam, shape,))


def button_stand(diameter, share=0.75):
    """Button stand for a button: from the line it sits on to the finished edge.

    `extension = share · diameter`, `past_rim = extension - diameter / 2`, `overlap = 2 · extension`. Authors differ: half the
    diameter brings the rim to the very edge, a machine manual asks for at least three quarters, others for the whole; for a
    button of 20 mm that is 10, 15 or 20 mm. Both sides have the same stand, and a waistband's overlap must equal it. A facing
    or a turn behind it is extra.

    Parameters
    ----------
    diameter : array_like
        diameter of the button (mm, 1 to 200)
    share : array_like, default 0.75
        extension over diameter (0.5 to 3)

    Returns
    -------
    extension : float
        From the button line to the finished edge (mm)
    past_rim : float
        From the button's rim to the finished edge (mm)
    overlap : float
        How far the two sides lie over each other when buttoned (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Sewing-machine manual, model 1288 (at least 3/4 of the diameter); a half to the whole is common practice, no source.
    `tests/vectors/button_stand.csv`.

    Example: button_stand(diameter=20, share=0.75) gives extension 15, past_rim 5, overlap 30
    """
    if type(diameter) is float and type(share) is float:
        return _new(ButtonStand, _core.one_button_stand(diameter, share))
    return _call.scalars("button_stand", ButtonStand, ("diameter", "share",), (diameter, share,))


def buttonhole(diameter, thickness, ease=0.0):
    """Length of the slit for a flat button.

    `slit = diameter + thickness + ease`. Authors differ on the ease: a machine manual has none, others add 3 mm (1/8 in)
    for the cloth; a bound buttonhole needs none. For a square button use its diagonal as diameter. A ball needs half its
    way round instead: wrap a strip of paper round it and halve that. Always try the button in a slit in a scrap of the
    same layers before cutting: a slit cannot be made shorter.

    Parameters
    ----------
    diameter : array_like
        diameter of the button (mm, 1 to 200)
    thickness : array_like
        thickness of the button at its thickest (mm, 0 to 100)
    ease : array_like, default 0
        extra for the thickness of the cloth (mm, 0 to 20)

    Returns
    -------
    float
        Length of the slit (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Sewing-machine manual, models 5147/5144 (diameter and thickness). `tests/vectors/buttonhole.csv` has published rows.

    Example: buttonhole(diameter=18.5, thickness=3.5, ease=0) gives 22
    """
    if type(diameter) is float and type(thickness) is float and type(ease) is float:
        return _core.one_buttonhole(diameter, thickness, ease)
    return _call.scalars("buttonhole", None, ("diameter", "thickness", "ease",), (diameter, thickness, ease,))


def cap_ease(armhole, cap):
    """Ease of a sleeve cap in its armhole.

    `ease = cap - armhole`. Walk both along their seam lines, front and back apart, since a right total can hide a front that
    is short. A shirt or a dropped shoulder has 0 to 2 %, a set-in sleeve in soft cloth 3 to 6 %; more than about 6 % in firm
    cloth gathers (common practice, no source).

    A cap shorter than its armhole is doubted, for the two may have changed places, and so is more than 10 % of ease,
    which gathers (common practice, no source).

    Parameters
    ----------
    armhole : array_like
        seam line of the armhole, or of a section of it (mm, 1 to 100000)
    cap : array_like
        seam line of the cap, or of the same section (mm, 1 to 100000)

    Returns
    -------
    ease : float
        What the cap is longer; negative when it is too short to be sewn in (mm)
    ease_pct : float
        The same over the armhole (%)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/cap_ease.csv` has hand-worked rows.

    Example: cap_ease(armhole=440, cap=452) gives ease 12, ease_pct 2.727, doubts 0
    """
    if type(armhole) is float and type(cap) is float:
        return _new(CapEase, _core.one_cap_ease(armhole, cap))
    return _call.scalars("cap_ease", CapEase, ("armhole", "cap",), (armhole, cap,))


def cap_for_ease(armhole, ease_pct=4.0):
    """Length that a sleeve cap must have for a wanted ease.

    `armhole · (1 + ease_pct / 100)`. Where the cap there is is short of it, raise the cap (by half of what is short, as a
    first guess, then walk it again), widen it, or lift the underarm of the armhole.

    Parameters
    ----------
    armhole : array_like
        seam line of the armhole (mm, 1 to 100000)
    ease_pct : array_like, default 4
        wanted ease over the armhole (%, -20 to 100)

    Returns
    -------
    float
        Seam line of the cap (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic; the default ease is common practice, no source. `tests/vectors/cap_for_ease.csv` has hand-worked rows.

    Example: cap_for_ease(armhole=440, ease_pct=4) gives 457.6
    """
    if type(armhole) is float and type(ease_pct) is float:
        return _core.one_cap_for_ease(armhole, ease_pct)
    return _call.scalars("cap_for_ease", None, ("armhole", "ease_pct",), (armhole, ease_pct,))


def cap_width_bound(cap, height):
    """Widest sleeve that a cap of a given length and height can have.

    `2 · √((cap / 2)² - height²)`, as if each half of the cap were straight. The line curves, so the sleeve is narrower than
    this: a bound, not a width to cut to. The bound shrinks as the cap is raised.

    Parameters
    ----------
    cap : array_like
        seam line of the whole cap (mm, 1 to 100000)
    height : array_like
        underarm line up to the top of the cap (mm, 0 to 100000)

    Returns
    -------
    float
        Upper bound of the width at the underarm line (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `height` when it is half the cap or more.

    Notes
    -----
    Source: Plane geometry. `tests/vectors/cap_width_bound.csv` has hand-worked rows.

    Example: cap_width_bound(cap=500, height=150) gives 400
    """
    if type(cap) is float and type(height) is float:
        return _core.one_cap_width_bound(cap, height)
    return _call.scalars("cap_width_bound", None, ("cap", "height",), (cap, height,))


def carried_liquor(mass_g, pick_up_pct):
    """Liquor that goods carry out of a bath.

    `carried = mass · pick_up / 100`, a litre taken as a kilogram. Weigh the goods dripping, drained and wrung: that is the
    pick-up, and it differs by several times. It decides how often to rinse. Cloth spun dry holds more than 10 %, so less is
    doubted. Let hot goods cool before wringing.

    Parameters
    ----------
    mass_g : array_like
        dry mass of the goods (g, 0.01 to 1000000)
    pick_up_pct : array_like
        liquor held, on the dry mass (%, 0 to 1000)

    Returns
    -------
    carried_ml : float
        Liquor carried (ml)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Definition of pick-up. `tests/vectors/carried_liquor.csv` has hand-worked rows. Where doubts begin: common practice, no
    source.

    Example: carried_liquor(mass_g=380, pick_up_pct=90) gives carried_ml 342, doubts 0, cautions 5
    """
    if type(mass_g) is float and type(pick_up_pct) is float:
        return _new(CarriedLiquor, _core.one_carried_liquor(mass_g, pick_up_pct))
    return _call.scalars("carried_liquor", CarriedLiquor, ("mass_g", "pick_up_pct",), (mass_g, pick_up_pct,))


def casing(width, ease=3.2, turn_in=6.4, heading=0.0):
    """Depth and allowance of a casing for elastic or a cord.

    `depth = width + ease + heading`, `allowance = depth + turn_in`. A tunnel that is too wide lets the elastic roll, one too
    narrow does not let it through. A heading stands above a second line of stitching.

    Parameters
    ----------
    width : array_like
        width of the elastic, or of the cord pressed flat (mm, 1 to 500)
    ease : array_like, default 3.2
        what the tunnel is wider (mm, 0 to 100)
    turn_in : array_like, default 6.4
        turned in at the raw edge (mm, 0 to 100)
    heading : array_like, default 0
        stands above the tunnel (mm, 0 to 500)

    Returns
    -------
    depth : float
        From the fold to the lower stitching (mm)
    allowance : float
        Allowance beyond the fold (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: A magazine's tutorial, allpeoplequilt.com (1/4 in turned in, then 1 3/4 in down, for elastic of 1 1/2 in); 1/8 to 1/4 in
    wider than the elastic.

    Example: casing(width=25, ease=3, turn_in=6, heading=0) gives depth 28, allowance 34
    """
    if type(width) is float and type(ease) is float and type(turn_in) is float and type(heading) is float:
        return _new(Casing, _core.one_casing(width, ease, turn_in, heading))
    return _call.scalars("casing", Casing, ("width", "ease", "turn_in", "heading",), (width, ease, turn_in, heading,))


def ciede2000(l1, a1, b1, l2, a2, b2):
    """How far apart two colours look, by CIEDE2000.

    With all three weights at 1. About 1 is just seen on plain cloth side by side; what is allowed for a match is yours to
    say. Where the two hues lie opposite each other the formula has a step, small for cloth.

    Parameters
    ----------
    l1 : array_like
        L* of one colour (0 to 100)
    a1 : array_like
        a* of one colour (-200 to 200)
    b1 : array_like
        b* of one colour (-200 to 200)
    l2 : array_like
        L* of the other (0 to 100)
    a2 : array_like
        a* of the other (-200 to 200)
    b2 : array_like
        b* of the other (-200 to 200)

    Returns
    -------
    float
        Colour difference

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: G. Sharma, W. Wu, E. N. Dalal, *The CIEDE2000 Color-Difference Formula*, Color Res. Appl. 30(1):21-30, 2005, with its
    test pairs.

    Example: ciede2000(l1=50, a1=2.6772, b1=-79.7751, l2=50, a2=0, b2=-82.7485) gives 2.0425
    """
    if type(l1) is float and type(a1) is float and type(b1) is float and type(l2) is float and type(a2) is float and type(b2) is float:
        return _core.one_ciede2000(l1, a1, b1, l2, a2, b2)
    return _call.scalars("ciede2000", None, ("l1", "a1", "b1", "l2", "a2", "b2",), (l1, a1, b1, l2, a2, b2,))


def circle_skirt(waist, length, fraction=1.0):
    """Radii of a skirt cut from part of a ring.

    The waist edge is an arc: `waist = 2π · fraction · waist_radius`. A fraction above 1 is made of several sectors.

    The waist is doubted as `girth_doubts` does, the length as
    `body_length_doubts`: 71 may be in centimetres.

    Parameters
    ----------
    waist : array_like
        finished waist edge, ease included (mm, 1 to 100000)
    length : array_like
        waist edge to hem edge, no allowances (mm, 0 to 100000)
    fraction : array_like, default 1
        part of a full ring: 0.5 is a half circle (0.01 to 4)

    Returns
    -------
    waist_radius : float
        Radius of the waist edge (mm)
    hem_radius : float
        Radius of the hem edge (mm)
    hem_length : float
        Length of the hem edge (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arc length of a sector. `tests/vectors/circle_skirt.csv` has published and hand-worked rows. Handed-down tables that
    divide the girth by 7 rather than by 2π hide a seam allowance in the radius: a square-dance handout gives 4 in where a
    girth of 28 in has 4.456, so 11.6 mm less. This function never does: take the allowance off the radius yourself.

    Example: circle_skirt(waist=710, length=600, fraction=0.5) gives waist_radius 226.00, hem_radius 826.00, hem_length 2594.96, doubts 0
    """
    if type(waist) is float and type(length) is float and type(fraction) is float:
        return _new(CircleSkirt, _core.one_circle_skirt(waist, length, fraction))
    return _call.scalars("circle_skirt", CircleSkirt, ("waist", "length", "fraction",), (waist, length, fraction,))


def circle_skirt_fraction(waist, length, cloth_width, pieces=2):
    """Largest part of a ring from which cloth of a given width gives a skirt of a given length.

    The fullest skirt that fits, up to four full rings: pieces and their lay are those of `circle_skirt_longest`, so
    each piece's width across the cloth, `(waist / (2π · fraction) + length) · across(angle)`, is at most `cloth_width`.
    There is no formula for the fraction; it is found by halving to the last bit, on the side that fits. A skirt that is
    less full need not fit: a smaller fraction has a larger radius.

    Doubts as for `circle_skirt`, and on cloth narrower than 200 mm.

    Parameters
    ----------
    waist : array_like
        finished waist edge, ease included (mm, 1 to 100000)
    length : array_like
        waist edge to hem edge, no allowances (mm, 0 to 100000)
    cloth_width : array_like
        width between the selvedges, less allowances (mm, 1 to 100000)
    pieces : array_like of int, default 2
        equal pieces the part of a ring is cut in (1 to 64)

    Returns
    -------
    fraction : float
        Part of a full ring
    length : float
        Waist edge to hem edge (mm)
    waist_radius : float
        Radius of the waist edge (mm)
    hem_radius : float
        Radius of the hem edge (mm)
    hem_length : float
        Length of the hem edge, all pieces together (mm)
    piece_angle_deg : float
        Angle of one piece (deg)
    cloth_length : float
        Cloth one piece takes along the grain (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `cloth_width` when no part of a ring from 0.01
        up fits; its `min` is the least width that would do.

    Notes
    -----
    Source: Plane geometry. `tests/vectors/circle_skirt_fraction.csv` has hand-worked rows.

    Example: circle_skirt_fraction(waist=710, length=600, cloth_width=1400, pieces=2) gives fraction 2, length 600, waist_radius 56.50, hem_radius 656.50, hem_length 8249.82, piece_angle_deg 360, cloth_length 1313.00, doubts 0
    """
    if type(waist) is float and type(length) is float and type(cloth_width) is float and type(pieces) is int:
        return _new(CircleSkirtOnCloth, _core.one_circle_skirt_fraction(waist, length, cloth_width, pieces))
    return _call.scalars("circle_skirt_fraction", CircleSkirtOnCloth, ("waist", "length", "cloth_width", "pieces",), (waist, length, cloth_width, pieces,))


def circle_skirt_longest(waist, fraction, cloth_width, pieces=2):
    """Longest skirt of a given part of a ring that cloth of a given width allows.

    The part of a ring is cut in equal pieces, sectors of `angle = 360° · fraction / pieces`. A piece up to a half ring
    lies with one straight edge along the selvedge and takes, of the width, `hem_radius · sin(angle)` up to a quarter
    ring and `hem_radius` from there to a half ring. A larger piece lies with its middle straight across the cloth and
    takes `hem_radius · (1 - cos(angle / 2))`: a full ring without a seam takes twice its hem radius. Folding changes
    nothing: a full ring cut through four layers is one piece, and `cloth_width` is the width before folding.

    Other ways to lay a piece may save cloth but turn its grain, and pieces may be nested: these are not counted. Seam
    and hem allowances are the caller's: take them off the cloth's width first.

    Doubts as for `circle_skirt`, and on cloth narrower than 200 mm.

    Parameters
    ----------
    waist : array_like
        finished waist edge, ease included (mm, 1 to 100000)
    fraction : array_like
        part of a full ring: 0.5 is a half circle (0.01 to 4, <= pieces)
    cloth_width : array_like
        width between the selvedges, less allowances (mm, 1 to 100000)
    pieces : array_like of int, default 2
        equal pieces the part of a ring is cut in (1 to 64)

    Returns
    -------
    fraction : float
        Part of a full ring
    length : float
        Waist edge to hem edge (mm)
    waist_radius : float
        Radius of the waist edge (mm)
    hem_radius : float
        Radius of the hem edge (mm)
    hem_length : float
        Length of the hem edge, all pieces together (mm)
    piece_angle_deg : float
        Angle of one piece (deg)
    cloth_length : float
        Cloth one piece takes along the grain (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `fraction` when one piece would be more than a
        full ring; naming `cloth_width` when the waist edge alone is wider than the cloth.

    Notes
    -----
    Source: Plane geometry. `tests/vectors/circle_skirt_longest.csv` has hand-worked rows.

    Example: circle_skirt_longest(waist=710, fraction=0.5, cloth_width=1400, pieces=2) gives fraction 0.5, length 1174.00, waist_radius 226.00, hem_radius 1400, hem_length 4398.23, piece_angle_deg 90, cloth_length 1400, doubts 0
    """
    if type(waist) is float and type(fraction) is float and type(cloth_width) is float and type(pieces) is int:
        return _new(CircleSkirtOnCloth, _core.one_circle_skirt_longest(waist, fraction, cloth_width, pieces))
    return _call.scalars("circle_skirt_longest", CircleSkirtOnCloth, ("waist", "fraction", "cloth_width", "pieces",), (waist, fraction, cloth_width, pieces,))


def cloth_mass(length, width, gsm):
    """Mass of a rectangle of cloth.

    `mass = length · width · gsm`. Weigh a cut square of known sides to find the mass per area of cloth you have.

    Parameters
    ----------
    length : array_like
        length of the cloth (mm, 0 to 10000000)
    width : array_like
        width of the cloth (mm, 0 to 100000)
    gsm : array_like
        grams in one square metre (gsm, 0.1 to 10000)

    Returns
    -------
    float
        Mass (g)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/cloth_mass.csv` has hand-worked rows.

    Example: cloth_mass(length=2000, width=1400, gsm=150) gives 420
    """
    if type(length) is float and type(width) is float and type(gsm) is float:
        return _core.one_cloth_mass(length, width, gsm)
    return _call.scalars("cloth_mass", None, ("length", "width", "gsm",), (length, width, gsm,))


def cloth_to_buy(length, repeat=0.0, extra=0.0, graduation=100.0):
    """Length of cloth to buy, with what repeats and nap take, rounded up to what the shop cuts.

    `length + repeat + extra`, up to a whole graduation. For cloth with a nap, or printed one way, all pieces lie the same
    way up; a table's length that let them lie both ways needs more: a quarter of a yard (228.6 mm) is the habit, and a
    lay of the real pieces is better than the habit. Cloth that shrinks: lengthen first.

    Parameters
    ----------
    length : array_like
        length the pieces take (mm, 0 to 1000000)
    repeat : array_like, default 0
        one repeat of the pattern, bought to match it (mm, 0 to 10000)
    extra : array_like, default 0
        for nap, for doubt: 228.6 is a quarter of a yard (mm, 0 to 100000)
    graduation : array_like, default 100
        what the shop cuts by: 114.3 is an eighth of a yard (mm, 1 to 10000)

    Returns
    -------
    float
        Length to buy (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Extra for nap: sewwithsarah.com; a repeat more, half a yard in doubt: sew4home.com. Habits, so arguments here.

    Example: cloth_to_buy(length=2130, repeat=0, extra=0, graduation=100) gives 2200
    """
    if type(length) is float and type(repeat) is float and type(extra) is float and type(graduation) is float:
        return _core.one_cloth_to_buy(length, repeat, extra, graduation)
    return _call.scalars("cloth_to_buy", None, ("length", "repeat", "extra", "graduation",), (length, repeat, extra, graduation,))


def component_check(fibre, finish, swatch, bath, temperature_c, minutes):
    """Whether one part of a garment bears a bath, and whether it takes colour there.

    Ask for every part: shell, lining, thread, interfacing, elastic, buttons; the garment bears what its weakest part bears. A
    fibre not known is refused bleach and heat until a swatch has passed, and is never said to take colour well. What bleach
    ruins whatever the swatch (wool, silk, hair, leather, elastane, acetate, polyamide, rubber; colours not fast;
    flame-retardant finishes) stays refused. Thread and lining of polyester come out of a plant dye as they went in.

    Usual are chlorine bleach up to 30 °C and 30 minutes, other baths up to 40 °C for an unknown fibre, 60 °C for rubber,
    elastane, acetate and leather and 4 hours above 60 °C for any; beyond that there are doubts.

    To find a fibre out, a burn test tells the family only, and nothing of a blend, a coated or a fused cloth: a snip the
    size of a thread, in tweezers, over water or a metal tray, window open, hair tied back, no child near.

    Parameters
    ----------
    fibre : Fibre
        what the part is made of
    finish : Finish
        what was done to it
    swatch : Swatch
        how a swatch of it stood the same bath
    bath : Bath
        the bath
    temperature_c : array_like
        hottest it gets (degC, 0 to 100)
    minutes : array_like
        longest it stays in (min, 0 to 1440)

    Returns
    -------
    bears : int
        0: it bears the bath; 1: a swatch decides; 2: it does not, so take it off first
    colour : int
        Colour it takes in this bath: 0 none, 1 some or not sure, 2 well
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `Choice`, from a door that passes numbers.

    Notes
    -----
    Source: Colour: University of Borås, *Textile chemistry*, dye classes. Chlorine: laundry guides that agree (wool, silk, mohair,
    leather, spandex, colours not fast); thespruce.com, howtodothings.com (acetate, elastic, flame-retardant). From memory:
    polyamide and resin finishes; where heat and time are beyond what is usual (30 minutes of bleach: WHO 2014, Annex G).

    Example: component_check(fibre='cotton', finish='plain', swatch='untried', bath='chlorine_bleach', temperature_c=20, minutes=10) gives bears 1, colour 0, doubts 0, cautions 113
    """
    fibre = _call.choice(Fibre, fibre, "component_check", "fibre")
    finish = _call.choice(Finish, finish, "component_check", "finish")
    swatch = _call.choice(Swatch, swatch, "component_check", "swatch")
    bath = _call.choice(Bath, bath, "component_check", "bath")
    if type(temperature_c) is float and type(minutes) is float:
        return _new(ComponentCheck, _core.one_component_check(fibre, finish, swatch, bath, temperature_c, minutes))
    return _call.scalars("component_check", ComponentCheck, ("fibre", "finish", "swatch", "bath", "temperature_c", "minutes",), (fibre, finish, swatch, bath, temperature_c, minutes,))


def cover_mark(ground, mark, limit=1.0):
    """Depth of dye that brings a mark within a limit of its ground.

    Mark and ground are taken as greys of their reflectance, the dye as adding the same K/S to both; the depth is where
    CIEDE2000 of the two first comes down to the limit. A mark of another hue than the ground shows longer than this says.
    Grease, wax, resin and scorch take dye otherwise: the forecast is void, so try the dye on the mark's own kind first. A
    ground that fades will show it again. Where no depth will do, hide the mark or recut.

    Parameters
    ----------
    ground : array_like
        reflectance of the cloth around the mark (0.001 to 1)
    mark : array_like
        reflectance of the mark (0.001 to 1)
    limit : array_like, default 1
        colour difference that may remain (0.01 to 50)

    Returns
    -------
    now : float
        Colour difference of mark and ground as they are, CIEDE2000
    depth : float
        Depth that the dye must add to both, K/S; 0 when nothing is needed
    ground_after : float
        Reflectance of the ground then
    mark_after : float
        Reflectance of the mark then
    after : float
        Colour difference then

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `limit` when cloth dyed as dark as cloth gets
        (a reflectance of 1 %) still shows the mark; `min` is then the difference that remains.

    Notes
    -----
    Source: E. Allen and G. Sharma, as for `k_over_s` and `ciede2000`. A limit of 1 is common practice,
    no source: about what is just seen.

    Example: cover_mark(ground=0.55, mark=0.42, limit=2.35) gives now 5.97, depth 1, ground_after 0.2424, mark_after 0.2182, after 2.35
    """
    if type(ground) is float and type(mark) is float and type(limit) is float:
        return _new(CoverMark, _core.one_cover_mark(ground, mark, limit))
    return _call.scalars("cover_mark", CoverMark, ("ground", "mark", "limit",), (ground, mark, limit,))


def curved_band(lengths, depth, top):
    """Upper edges of a band in sections, each cut as an arc, so that the joins have no kink.

    All sections are parts of one ring with `outer_radius = bottom · depth / (bottom - top)`, where `bottom` is the sum of
    the lengths; each top is its length times `top / bottom`. Every end lies on a radius, square to both edges; an end
    that overlaps is a piece of its own.

    Parameters
    ----------
    lengths : sequence of float
        finished lower edge of each section, in order (mm, 1 to 100000, 1 to 100 items)
    depth : float
        finished depth, along the radius (mm, 1 to 10000)
    top : float
        finished upper edge of all sections together (mm, 1 to 10000000)

    Returns
    -------
    tops : array
        finished upper edge of each section (mm)
    inner_radius : float
        Radius of the upper, shorter edge (mm)
    outer_radius : float
        Radius of the lower, longer edge (mm)
    angle_deg : float
        Angle of all sections together (deg)
    sagitta : float
        Height of the longest section's lower arc above the straight line between its ends (mm)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `top` when it is not below the
        sum of the lengths, or so far below that the sections would be more than a full ring.

    Notes
    -----
    Source: Arc length of a sector. `tests/vectors/curved_band.csv` has hand-worked rows.

    Example: curved_band(lengths=[140, 330, 230], depth=50, top=676) gives tops 135.20 318.69 222.11, inner_radius 1408.33, outer_radius 1458.33, angle_deg 27.50, sagitta 9.32
    """
    lengths = _numbers.list_of(lengths, "curved_band", "lengths")
    depth = _numbers.number(depth, "curved_band", "depth")
    top = _numbers.number(top, "curved_band", "top")
    return _new(CurvedBand, _core.one_curved_band(lengths, depth, top))


def curved_binding(edge, radius, finished, curve="inward"):
    """Stretch of a bias strip that is to lie flat on a curved edge.

    The strip is cut as long as the finished edge, where its fold will lie. Its seam lies `finished` further into the cloth:
    round a neck that is a longer arc, `seam = edge · (radius + finished) / radius`, and the strip is stretched to it by
    `100 · finished / radius` percent; round an outward corner a shorter one, and it is eased. Cut as long as the seam instead,
    a neck's binding stands away. A stretched bias strip grows narrower: as a net of threads that keep their length it keeps
    `√(2 - (1 + stretch)²)` of its width; press it to shape before sewing, and cut it so much wider. A stretch of 41 % would
    close the net.

    Handed-down rules cut the strip 5 to 10 % shorter than the edge whatever the curve (common practice, no source): that is
    right for a binding of 7 mm at radii of 70 to 140 mm, too much on a straighter edge, too little on a tighter one.

    Parameters
    ----------
    edge : array_like
        length of the finished edge (mm, 1 to 100000)
    radius : array_like
        its radius (mm, 1 to 1000000)
    finished : array_like
        width of the binding that shows (mm, 0.5 to 1000)
    curve : EdgeCurve, default "inward"
        which way the edge curves

    Returns
    -------
    seam : float
        Length of the seam that sews the binding on (mm)
    stretch_pct : float
        What the strip is stretched along that seam; negative where it is eased (%)
    width_pct : float
        Width that a bias strip keeps where it is so stretched; above 100 where it is eased (%)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `finished` when bias cannot stretch so far, or when
        the binding reaches the centre of an outward curve.

    Notes
    -----
    Source: Arcs about one centre; a net of threads of fixed length, turned from 45° (plane geometry: real cloth gives a little more
    along its threads). `tests/vectors/curved_binding.csv` has hand-worked rows.

    Example: curved_binding(edge=300, radius=100, finished=8, curve='inward') gives seam 324, stretch_pct 8, width_pct 91.302
    """
    curve = _call.choice(EdgeCurve, curve, "curved_binding", "curve")
    if type(edge) is float and type(radius) is float and type(finished) is float:
        return _new(CurvedBinding, _core.one_curved_binding(edge, radius, finished, curve))
    return _call.scalars("curved_binding", CurvedBinding, ("edge", "radius", "finished", "curve",), (edge, radius, finished, curve,))


def cut_for_change(finished, change_pct):
    """Length to cut so that washing brings it to a finished length.

    `cut = finished / (1 + change / 100)`. Adding the percentage to the finished length is the usual slip and comes out
    short. Shrink cloth before cutting where you can; this is for what cannot be shrunk first.

    A change of less than 0.2 %, which no tape shows, is doubted: 0.05 may be a share.

    Parameters
    ----------
    finished : array_like
        length wanted after washing (mm, 0 to 1000000)
    change_pct : array_like
        dimensional change: shrinkage of 5 % is -5 (%, -90 to 100)

    Returns
    -------
    cut : float
        Length to cut (mm)
    added : float
        What is added; negative for cloth that grows (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: ISO 5077:2007 (definition), solved for the length before. `tests/vectors/cut_for_change.csv` has hand-worked rows.

    Example: cut_for_change(finished=600, change_pct=-5) gives cut 631.58, added 31.58, doubts 0
    """
    if type(finished) is float and type(change_pct) is float:
        return _new(CutForChange, _core.one_cut_for_change(finished, change_pct))
    return _call.scalars("cut_for_change", CutForChange, ("finished", "change_pct",), (finished, change_pct,))


def cut_state(drawn, allowance, cut_edges):
    """Finished and cut width of a piece, from what its two edges are drawn as.

    An edge drawn as cut line loses its allowance to the seam, one drawn as seam line has it added:
    `finished = drawn - cut_edges · allowance`, `cut = drawn + (2 - cut_edges) · allowance`. Which of the two a drawing
    shows is the costliest question of all: a drawn line taken for the other is wrong by two allowances a seam.

    Parameters
    ----------
    drawn : array_like
        width as drawn, edge to edge (mm, 1 to 100000)
    allowance : array_like
        seam allowance at each edge (mm, 0 to 1000)
    cut_edges : array_like of int
        how many of the two edges are drawn as cut line (0 to 2)

    Returns
    -------
    finished : float
        Width between the seam lines (mm)
    cut : float
        Width between the cut edges (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `allowance` when nothing is left between the
        seams.

    Notes
    -----
    Source: Arithmetic. How wide an allowance is, is habit, so there is no default: 5/8 in in home patterns (common practice, no
    source), 1/2 in on straight seams and 1/4 in on curves in industry (course cards on ASTM D6193), 3/8 in in Butterick's
    patterns of 1916, 1 in on the long seams of a wool bodice by L. I. Baldt, 1916. Taken for one another, a 1/4 and a 5/8 in
    allowance are 3/4 in (19 mm) apart over the two edges of one piece. For a band folded along its middle see
    `straight_band_depth`.
    `tests/vectors/cut_state.csv` has hand-worked rows.

    Example: cut_state(drawn=50, allowance=10, cut_edges=2) gives finished 30, cut 50
    """
    if type(drawn) is float and type(allowance) is float and type(cut_edges) is int:
        return _new(CutState, _core.one_cut_state(drawn, allowance, cut_edges))
    return _call.scalars("cut_state", CutState, ("drawn", "allowance", "cut_edges",), (drawn, allowance, cut_edges,))


def dart(intake, length):
    """Leg and angle of a dart from its intake and the length of its centre line.

    `leg = √((intake / 2)² + length²)` and `angle = 2 · atan(intake / (2 · length))`.

    A dart wider than it is long is doubted: the two may have changed places.

    Parameters
    ----------
    intake : array_like
        width taken up at the edge (mm, 0 to 10000)
    length : array_like
        edge to point along the middle of the dart, not the leg (mm, 1 to 10000)

    Returns
    -------
    leg : float
        Length of each leg, edge to point (mm)
    angle_deg : float
        Angle at the point, which is also the kink of a straight edge when the dart is closed (deg)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Plane geometry. `tests/vectors/dart.csv` has hand-worked rows.

    Example: dart(intake=30, length=110) gives leg 111.02, angle_deg 15.53, doubts 0
    """
    if type(intake) is float and type(length) is float:
        return _new(Dart, _core.one_dart(intake, length))
    return _call.scalars("dart", Dart, ("intake", "length",), (intake, length,))


def dart_equivalent(intake, finished, tucks=1):
    """Ease, gathers or tucks that take up as much as a dart, along a stretch of its edge.

    `ease = 100 · intake / finished`, `ratio = (finished + intake) / finished`, `depth = intake / (2 · tucks)`. They take
    the same length of the edge, but not to the same point: ease and gathers give a soft fullness below, tucks are open
    at their ends. Firm cloth eases in by some 4 to 6 %, soft wool by more: common practice, no source.

    Parameters
    ----------
    intake : array_like
        width of the dart at the edge (mm, 0 to 10000)
    finished : array_like
        stretch of the edge that takes it, as it is to be sewn (mm, 1 to 100000)
    tucks : array_like of int, default 1
        number of tucks or pleats (1 to 100)

    Returns
    -------
    ease_pct : float
        Ease of the seam, if it is eased in (%)
    gather_ratio : float
        Ratio of the gathers, if it is gathered
    tuck_depth : float
        Depth of each tuck or pleat, if it is folded (mm)
    doubts : int
        `GATHERS_SCANT` or `GATHERS_LARGE` when as gathers it would look like a mistake (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic; tucks by L. I. Baldt, *Clothing for Women*, 1916 (twice the depth times the number). The doubt is
    `gathers`'s own, and on the gathers alone.

    Example: dart_equivalent(intake=12, finished=120, tucks=2) gives ease_pct 10, gather_ratio 1.1, tuck_depth 3, doubts 262144
    """
    if type(intake) is float and type(finished) is float and type(tucks) is int:
        return _new(DartEquivalent, _core.one_dart_equivalent(intake, finished, tucks))
    return _call.scalars("dart_equivalent", DartEquivalent, ("intake", "finished", "tucks",), (intake, finished, tucks,))


def dart_from_gape(gape, gape_distance, dart_leg):
    """Dart that takes up the gape of an edge, turned to another edge.

    Pin the gape to a fold that runs out at the bust point; a dart of the same angle elsewhere takes it:
    `intake = gape · dart_leg / gape_distance`. A dart that is there already is widened by so much. Pin and count one
    side only: a fold pinned over the middle is shared by both. The edge is afterwards shorter by the gape.

    Parameters
    ----------
    gape : array_like
        what is pinned out at the edge, on one side (mm, 0 to 10000)
    gape_distance : array_like
        from there to the bust point (mm, 1 to 10000)
    dart_leg : array_like
        bust point to the edge where the dart is to be (mm, 1 to 10000)

    Returns
    -------
    intake : float
        Width of the dart at its own edge (mm)
    angle_deg : float
        Angle at the point (deg)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `gape` when it is more than twice its distance.

    Notes
    -----
    Source: Similar triangles; both distances are legs, from the bust point, although the sewn dart ends short of it.
    `tests/vectors/dart_from_gape.csv` has hand-worked rows.

    Example: dart_from_gape(gape=10, gape_distance=180, dart_leg=144) gives intake 8, angle_deg 3.184
    """
    if type(gape) is float and type(gape_distance) is float and type(dart_leg) is float:
        return _new(DartFromGape, _core.one_dart_from_gape(gape, gape_distance, dart_leg))
    return _call.scalars("dart_from_gape", DartFromGape, ("gape", "gape_distance", "dart_leg",), (gape, gape_distance, dart_leg,))


def dart_in_panel(panel_width, wanted_width, count, largest_intake, length):
    """Darts that bring a panel there is to the width wanted.

    The panel's own width leads, not the difference of two body measures: what must go is `panel_width - wanted_width`,
    shared evenly by the darts but no more than `largest_intake` each; the rest goes to the side seam.
    `kink = 2 · atan(intake / (2 · length))`.

    Parameters
    ----------
    panel_width : array_like
        width there is at the edge, between seam lines (mm, 1 to 100000)
    wanted_width : array_like
        finished width at the edge, ease included (mm, 1 to 100000, <= panel_width)
    count : array_like of int
        number of darts (1 to 16)
    largest_intake : array_like
        the most that one dart may take (mm, 0 to 10000)
    length : array_like
        edge to point along the middle of a dart (mm, 1 to 10000)

    Returns
    -------
    intake_each : float
        Intake of each dart (mm)
    leftover : float
        Width still to be taken, at the side seam (mm)
    leg : float
        Length of each leg (mm)
    kink_deg : float
        Kink of the straight edge at each closed dart; the edge is trued there before cutting (deg)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `wanted_width` when the panel is narrower than
        that: it must be pieced or let out.

    Notes
    -----
    Source: Arithmetic and plane geometry. The limits behind the doubts: `DART_LONG` Butterick, *The New Dressmaker*, 1921 (hip
    line 7 in below the waist); `DART_WIDE` and `DARTS_CLOSE` common practice, no source.

    Example: dart_in_panel(panel_width=242, wanted_width=190, count=1, largest_intake=30, length=110) gives intake_each 30, leftover 22, leg 111.02, kink_deg 15.53, doubts 0
    """
    if type(panel_width) is float and type(wanted_width) is float and type(largest_intake) is float and type(length) is float and type(count) is int:
        return _new(DartInPanel, _core.one_dart_in_panel(panel_width, wanted_width, count, largest_intake, length))
    return _call.scalars("dart_in_panel", DartInPanel, ("panel_width", "wanted_width", "count", "largest_intake", "length",), (panel_width, wanted_width, count, largest_intake, length,))


def dart_turned(intake, leg, new_leg):
    """Intake of a dart that is turned about its point to an edge at another distance.

    Turning keeps the angle, so the intake grows with the leg: `intake · new_leg / leg`.

    Parameters
    ----------
    intake : array_like
        width of the dart at the edge where it is now (mm, 0 to 10000)
    leg : array_like
        edge to point along the leg where it is now (mm, 1 to 10000)
    new_leg : array_like
        edge to point along the leg in its new place (mm, 1 to 10000)

    Returns
    -------
    float
        Width of the dart at the new edge (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `intake` when it is more than `2 · leg`: no
        such dart closes.

    Notes
    -----
    Source: Similar triangles. `tests/vectors/dart_turned.csv` has hand-worked rows.

    Example: dart_turned(intake=26, leg=100, new_leg=70) gives 18.2
    """
    if type(intake) is float and type(leg) is float and type(new_leg) is float:
        return _core.one_dart_turned(intake, leg, new_leg)
    return _call.scalars("dart_turned", None, ("intake", "leg", "new_leg",), (intake, leg, new_leg,))


def dart_width_at(intake, leg, distance):
    """Width of a dart between its point and its edge.

    `width = intake · distance / leg`: what is lost there when the dart is closed, or gained when it is opened.

    Parameters
    ----------
    intake : array_like
        width of the dart at the edge (mm, 0 to 10000)
    leg : array_like
        edge to point along the leg (mm, 1 to 10000)
    distance : array_like
        from the point along the leg (mm, 0 to 10000, <= leg)

    Returns
    -------
    float
        Width of the dart there (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `intake` when it is more than `2 · leg`: no
        such dart closes; naming `distance` when it is beyond the edge.

    Notes
    -----
    Source: Similar triangles. Straight legs only: a curved dart is narrower or wider than this between its ends.
    `tests/vectors/dart_width_at.csv` has hand-worked rows.

    Example: dart_width_at(intake=26, leg=100, distance=70) gives 18.2
    """
    if type(intake) is float and type(leg) is float and type(distance) is float:
        return _core.one_dart_width_at(intake, leg, distance)
    return _call.scalars("dart_width_at", None, ("intake", "leg", "distance",), (intake, leg, distance,))


def deepest_hem(radius, excess_pct=5.0):
    """Deepest hem on a flared edge that can still be eased in.

    `hem_on_curve` the other way: `depth = radius · pct / (200 + pct)`.

    Parameters
    ----------
    radius : array_like
        radius of the finished hem edge, laid flat (mm, 1 to 1000000)
    excess_pct : array_like, default 5
        fullness that the cloth eases or shrinks away (%, 0 to 100)

    Returns
    -------
    float
        Depth of the hem (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arcs about one centre. How much a cloth eases is habit: firm cotton some 3 to 5 %, wool that shrinks under steam 10 %
    and more (common practice, no source); try a hand's breadth.

    Example: deepest_hem(radius=840, excess_pct=10) gives 40
    """
    if type(radius) is float and type(excess_pct) is float:
        return _core.one_deepest_hem(radius, excess_pct)
    return _call.scalars("deepest_hem", None, ("radius", "excess_pct",), (radius, excess_pct,))


def dimensional_change(before, after):
    """Dimensional change of cloth in the wash, in percent; minus is shrinkage.

    `change = 100 · (after - before) / before`. A shrinkage stated as 8.57 % is a change of -8.57. Mark at least 350 mm apart, 50 mm from the edges, along each grain.

    Parameters
    ----------
    before : array_like
        distance of the marks before washing (mm, 1 to 1000000)
    after : array_like
        distance of the marks after washing (mm, 1 to 1000000)

    Returns
    -------
    float
        Change (%)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: ISO 5077:2007 and AATCC 135 (formula). `tests/vectors/dimensional_change.csv` has published rows.

    Example: dimensional_change(before=350, after=320) gives -8.57
    """
    if type(before) is float and type(after) is float:
        return _core.one_dimensional_change(before, after)
    return _call.scalars("dimensional_change", None, ("before", "after",), (before, after,))


def double_dart(intake, upper, lower):
    """Legs and angles of a dart with a point at each end, as at the waist of a dress.

    Each half is a dart of its own: `leg = √((intake / 2)² + length²)`, `angle = 2 · atan(intake / (2 · length))`. Where
    the two meet each leg turns by half the sum of the two angles; the fold of the sewn dart is snipped there, or it
    pulls. The upper and lower legs need not be alike, but the two legs of one half must be, or the side seams hang askew.

    Parameters
    ----------
    intake : array_like
        width taken up where the dart is widest (mm, 0 to 10000)
    upper : array_like
        from there to the upper point, along the middle (mm, 1 to 10000)
    lower : array_like
        from there to the lower point, along the middle (mm, 1 to 10000)

    Returns
    -------
    upper_leg : float
        Length of each upper leg (mm)
    lower_leg : float
        Length of each lower leg (mm)
    upper_angle_deg : float
        Angle at the upper point (deg)
    lower_angle_deg : float
        Angle at the lower point (deg)
    bend_deg : float
        How far each leg turns where the dart is widest, where its fold is snipped (deg)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Plane geometry. The limits behind the doubts are those of `dart_in_panel`; `DART_LONG` asks after `lower`, which
    runs from the waist to the hip. `tests/vectors/double_dart.csv` has hand-worked rows.

    Example: double_dart(intake=25, upper=150, lower=120) gives upper_leg 150.52, lower_leg 120.65, upper_angle_deg 9.527, lower_angle_deg 11.894, bend_deg 10.71, doubts 0
    """
    if type(intake) is float and type(upper) is float and type(lower) is float:
        return _new(DoubleDart, _core.one_double_dart(intake, upper, lower))
    return _call.scalars("double_dart", DoubleDart, ("intake", "upper", "lower",), (intake, upper, lower,))


def elastic(girth, widest, shorter=75.0, overlap=12.7):
    """Length of elastic for a waist or a cuff, and the stretch asked of it.

    `round = girth - shorter`, `cut = round + overlap`. Elastics differ: pin it round the body before cutting, and see that
    its own full stretch is more than `passing_pct`. The casing's edge must itself be as long as the widest part. Never
    round a throat; for children's clothes see the safety standards that hold where you are.

    A girth below 110 mm, less than a child's wrist (from memory), is doubted.

    Parameters
    ----------
    girth : array_like
        girth of the body where it sits (mm, 1 to 100000)
    widest : array_like
        girth that it must pass over, as the hip for a waist (mm, 1 to 100000, >= girth)
    shorter : array_like, default 75
        what the elastic is shorter than the girth (mm, 0 to 10000, < girth)
    overlap : array_like, default 12.7
        overlap where its ends are joined (mm, 0 to 1000)

    Returns
    -------
    round : float
        Way round the joined elastic, not stretched (mm)
    cut : float
        Length to cut, with its overlap (mm)
    worn_pct : float
        Stretch when worn (%)
    passing_pct : float
        Stretch when the widest part passes through (%)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Always `ELASTIC_BATH` (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `widest` when it is less than the girth; naming
        `shorter` when no elastic is left.

    Notes
    -----
    Source: A step-by-step sewing column, hastingstribune.com, 2020 (waist less 2 to 4 in for a snug one, and 1/2 in of overlap);
    the default of 75 mm, 3 in, is the middle of its range.

    Example: elastic(girth=720, widest=980, shorter=70, overlap=12) gives round 650, cut 662, worn_pct 10.769, passing_pct 50.769, doubts 0, cautions 8
    """
    if type(girth) is float and type(widest) is float and type(shorter) is float and type(overlap) is float:
        return _new(Elastic, _core.one_elastic(girth, widest, shorter, overlap))
    return _call.scalars("elastic", Elastic, ("girth", "widest", "shorter", "overlap",), (girth, widest, shorter, overlap,))


def even_spacing(first, last, count):
    """Pitch of buttons or holes spaced evenly.

    `pitch = (last - first) / (count - 1)`.

    Parameters
    ----------
    first : array_like
        place of the first, from the edge's start (mm, 0 to 100000)
    last : array_like
        place of the last (mm, 0 to 100000, > first)
    count : array_like of int
        how many (2 to 1000)

    Returns
    -------
    float
        From middle to middle of neighbours (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `last` when it is not beyond `first`.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/even_spacing.csv` has hand-worked rows.

    Example: even_spacing(first=30, last=570, count=7) gives 90
    """
    if type(first) is float and type(last) is float and type(count) is int:
        return _core.one_even_spacing(first, last, count)
    return _call.scalars("even_spacing", None, ("first", "last", "count",), (first, last, count,))


def five_gores(waist, hip):
    """Widths of a five-gored skirt's half pattern by a handed-down rule.

    At the waist: front an eighth, side a sixth of it, the back what is left of half. At the hip, 6 in below: the front 1 in
    wider than above, the side half as wide again, the back what is left of half the hip. The rule is for a full skirt of
    its time, 2 1/2 to 3 yd round the hem, with its fullness at the back: for gores alike use `gore`. Seams are extra.

    Waist and hip are doubted as the functions of `body` do.

    Parameters
    ----------
    waist : array_like
        finished waist, ease included (mm, 1 to 100000)
    hip : array_like
        finished hip, ease included (mm, 1 to 100000)

    Returns
    -------
    front_waist : float
        Half the front gore at the waist (mm)
    side_waist : float
        Side gore at the waist (mm)
    back_waist : float
        Back gore at the waist, its gathers included (mm)
    front_hip : float
        Half the front gore at the hip (mm)
    side_hip : float
        Side gore at the hip (mm)
    back_hip : float
        Back gore at the hip (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `hip` when nothing of it is left for the back.

    Notes
    -----
    Source: C. C. Ingalls, *Text-Book on Domestic Art*, 1911, "Five-Gored Underskirt: Proportions".

    Example: five_gores(waist=600, hip=1000) gives front_waist 75, side_waist 100, back_waist 125, front_hip 100.4, side_hip 150, back_hip 249.6, doubts 0
    """
    if type(waist) is float and type(hip) is float:
        return _new(FiveGores, _core.one_five_gores(waist, hip))
    return _call.scalars("five_gores", FiveGores, ("waist", "hip",), (waist, hip,))


def flounce(edge, depth, rings, allowance=0.0):
    """Rings for a flounce that lies flat along its edge and ripples at its hem.

    Each full ring is cut open, and joined to the next or to itself: of its way round it loses an allowance at both cuts.
    `inner_radius = (edge / rings + 2 · allowance) / 2π`, `hem = rings · (2π · outer_radius - 2 · allowance)`. More rings
    make it fuller, with a smaller hole. The seam's own allowance lies inside the inner radius and is snipped to lie
    along the edge. For a part of one ring, see `circle_skirt`.

    Parameters
    ----------
    edge : array_like
        edge that the flounce is sewn to, all round (mm, 1 to 1000000)
    depth : array_like
        finished depth, seam to hem (mm, 1 to 10000)
    rings : array_like of int
        number of full rings (1 to 200)
    allowance : array_like, default 0
        seam allowance at each cut (mm, 0 to 100)

    Returns
    -------
    inner_radius : float
        Radius of the seam line that is sewn on (mm)
    outer_radius : float
        Radius of the finished hem (mm)
    hem : float
        Finished hem of all rings joined (mm)
    ratio : float
        Hem over edge: how much it ripples
    square : float
        Side of the square of cloth that each ring takes, without hem allowance (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arc length of a ring. `tests/vectors/flounce.csv` has hand-worked rows.

    Example: flounce(edge=1200, depth=120, rings=3, allowance=10) gives inner_radius 66.85, outer_radius 186.85, hem 3461.9, ratio 2.885, square 373.69
    """
    if type(edge) is float and type(depth) is float and type(allowance) is float and type(rings) is int:
        return _new(Flounce, _core.one_flounce(edge, depth, rings, allowance))
    return _call.scalars("flounce", Flounce, ("edge", "depth", "rings", "allowance",), (edge, depth, rings, allowance,))


def folded_band(depth, allowance, turn=0.0, past=0.0):
    """Width of a strip that is folded along its middle to a band, a cuff or a placket, and where its fold lies.

    `cut_width = 2 · depth + 2 · allowance + turn + past`, `fold_line = allowance + depth + turn / 2`. The turn is the cloth
    that the fold takes by its thickness, half from either side. An inner layer that is caught by stitching in the seam from
    the right side must reach `past` below it; sewn down by hand, 0. Interfacing ends at the fold line or goes over it as the
    cloth asks. For the strip's length see `straight_band`; for the depth of a strip there is,
    `straight_band_depth` of its width less `past`.

    Parameters
    ----------
    depth : array_like
        finished depth (mm, 1 to 10000)
    allowance : array_like
        seam allowance at each long edge (mm, 0 to 1000)
    turn : array_like, default 0
        cloth taken by the thickness of the fold (mm, 0 to 100)
    past : array_like, default 0
        what the inner layer reaches past the seam (mm, 0 to 100)

    Returns
    -------
    cut_width : float
        Width to cut, raw edge to raw edge (mm)
    fold_line : float
        Fold line from the raw edge that is sewn to the garment (mm)
    inner : float
        From the fold to the raw edge of the inner layer (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic; the turn is common practice, no source: fold a sample to learn it. `tests/vectors/folded_band.csv` has
    hand-worked rows.

    Example: folded_band(depth=25, allowance=10, turn=2, past=0) gives cut_width 72, fold_line 36, inner 36
    """
    if type(depth) is float and type(allowance) is float and type(turn) is float and type(past) is float:
        return _new(FoldedBand, _core.one_folded_band(depth, allowance, turn, past))
    return _call.scalars("folded_band", FoldedBand, ("depth", "allowance", "turn", "past",), (depth, allowance, turn, past,))


def format_length(length, style="exact"):
    """A length as text, rounded to the nearest graduation of the style.

    From the middle between two graduations it is rounded away from zero. `parse_length` reads every style, and gives
    back the same number when the length is a whole number of the style's graduations, or for the style `exact` always.
    Fractions are reduced, and a part that is nothing is left out. `exact` writes very small numbers with an exponent,
    and a fourth decimal where three could be taken for thousands: `796.9250 mm`.

    Parameters
    ----------
    length : float
        the length (mm, -10000000 to 10000000)
    style : Style, default "exact"
        how to print it

    Returns
    -------
    str
        The length as text.

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Tape fractions: nearest is `round(inches · n) / n`, then reduced. Common practice, no source.

    Example: format_length(length=796.925, style='inch_eighth') gives 31 3/8 in
    """
    length = _numbers.number(length, "format_length", "length")
    style = _call.choice(Style, style, "format_length", "style")
    return _core.one_format_length(length, style)


def front_back_doubts(front, back):
    """Doubts on a front and a back at one level, together.

    One more than one and a half times the other (`FRONT_BACK_APART`) may be whole against half.

    Parameters
    ----------
    front : array_like
        width of the front (mm, 1 to 100000)
    back : array_like
        width of the back (mm, 1 to 100000)

    Returns
    -------
    int
        The doubts (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Common practice, no source: whole against half gives 2, and a threshold of 1.5 leaves room for a full bust or seat.

    Example: front_back_doubts(front=500, back=440) gives 0
    """
    if type(front) is float and type(back) is float:
        return _core.one_front_back_doubts(front, back)
    return _call.scalars("front_back_doubts", None, ("front", "back",), (front, back,))


def frustum(lower_diameter, upper_diameter, height):
    """Part of a ring that rolls up to a cone, or to a part of one, of given diameters and height.

    `slant = √(((lower - upper) / 2)² + height²)`, `outer_radius = lower · slant / (lower - upper)`, `inner_radius = upper ·
    slant / (lower - upper)`, `angle = 180° · (lower - upper) / slant`. Hats, shades, flared cuffs and the tops of bags
    are measured so; where the edges and the slant are measured along the cloth use
    `shaped_band`, which is the same ring.

    Parameters
    ----------
    lower_diameter : array_like
        diameter of the larger end (mm, 1 to 100000)
    upper_diameter : array_like
        diameter of the smaller end; 0 is a cone (mm, 0 to 100000, < lower_diameter)
    height : array_like
        from end to end, straight up (mm, 0 to 100000)

    Returns
    -------
    slant : float
        From edge to edge along the cloth (mm)
    inner_radius : float
        Radius of the upper, smaller edge, laid flat (mm)
    outer_radius : float
        Radius of the lower, larger edge, laid flat (mm)
    angle_deg : float
        Angle of the sector (deg)
    area_mm2 : float
        Area of the sector, without allowances (mm2)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `upper_diameter` when it is not the smaller: turn
        the shape over, and a tube of two equal ends is a rectangle.

    Notes
    -----
    Source: E. M. Longfield, *Sheet Metal Drafting*, 1921 (slant height; lateral area by half the sum of the circumferences);
    Math Forum, *Building a Cone* (radii and angle). `tests/vectors/frustum.csv` has their numbers.

    Example: frustum(lower_diameter=240, upper_diameter=120, height=80) gives slant 100, inner_radius 100, outer_radius 200, angle_deg 216, area_mm2 56548.67
    """
    if type(lower_diameter) is float and type(upper_diameter) is float and type(height) is float:
        return _new(Frustum, _core.one_frustum(lower_diameter, upper_diameter, height))
    return _call.scalars("frustum", Frustum, ("lower_diameter", "upper_diameter", "height",), (lower_diameter, upper_diameter, height,))


def gather_ratio(flat, finished):
    """Ratio of gathers that a strip there is gives on a line.

    `ratio = flat / finished`.

    A ratio below 1.2 or above 4 is doubted (common practice, no source).

    Parameters
    ----------
    flat : array_like
        length of the strip, without allowances (mm, 1 to 20000000)
    finished : array_like
        line that the gathers are sewn to (mm, 1 to 1000000, <= flat)

    Returns
    -------
    flat : float
        Length of the strip before gathering, without allowances (mm)
    taken_up : float
        What the gathers take up (mm)
    ratio : float
        Strip over line: 1.5 is half as much again
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `finished` when the strip is shorter than that.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/gather_ratio.csv` has published and hand-worked rows.

    Example: gather_ratio(flat=340, finished=240) gives flat 340, taken_up 100, ratio 1.4167, doubts 0
    """
    if type(flat) is float and type(finished) is float:
        return _new(Gathers, _core.one_gather_ratio(flat, finished))
    return _call.scalars("gather_ratio", Gathers, ("flat", "finished",), (flat, finished,))


def gather_sections(lengths, flat):
    """Parts of a strip between its marks, so that gathers are even from notch to notch.

    Each section of the line takes its share of the strip: `flat · length / sum of lengths`. Quarter marks of a strip fall on
    quarter marks of the line only where these are evenly spaced: on a waist whose front is wider than its back they are not.

    A ratio below 1.2 or above 4 is doubted (common practice, no source).

    Parameters
    ----------
    lengths : sequence of float
        sections of the line between its notches, in order (mm, 1 to 100000, 1 to 100 items)
    flat : float
        length of the strip, without allowances (mm, 1 to 20000000)

    Returns
    -------
    flats : array
        part of the strip for each section (mm)
    finished : float
        Length of the line, all sections together (mm)
    ratio : float
        Strip over line, the same in every section
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `flat` when the strip is shorter
        than its line.

    Notes
    -----
    Source: Proportion. `tests/vectors/gather_sections.csv` has hand-worked rows.

    Example: gather_sections(lengths=[200, 340, 180], flat=1080) gives flats 300 510 270, finished 720, ratio 1.5, doubts 0
    """
    lengths = _numbers.list_of(lengths, "gather_sections", "lengths")
    flat = _numbers.number(flat, "gather_sections", "flat")
    return _new(GatherSections, _core.one_gather_sections(lengths, flat))


def gathers(finished, ratio):
    """Strip to cut for gathers of a given ratio.

    `flat = finished · ratio`. About 1.5 for a flounce, 2 for a ruche or heavy curtain, up to 3 for sheer cloth; gather a
    sample of the cloth itself.

    A ratio below 1.2 or above 4 is doubted (common practice, no source).

    Parameters
    ----------
    finished : array_like
        line that the gathers are sewn to (mm, 1 to 1000000)
    ratio : array_like
        strip over line; "100 % fullness" is a ratio of 2 (1 to 20)

    Returns
    -------
    flat : float
        Length of the strip before gathering, without allowances (mm)
    taken_up : float
        What the gathers take up (mm)
    ratio : float
        Strip over line: 1.5 is half as much again
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Ratios: C. C. Ingalls, *Text-Book on Domestic Art*, 1911 (flounce 1 1/2); *The New Dressmaker*, Butterick, 1921
    (ruche 2); I. Crouch, Extension Circular A-249, North Dakota, 1956 (draperies 2); a booklet on draperies (sheer
    curtains 3). The doubt below 1.2 is common practice, no source.

    Example: gathers(finished=240, ratio=1.75) gives flat 420, taken_up 180, ratio 1.75, doubts 0
    """
    if type(finished) is float and type(ratio) is float:
        return _new(Gathers, _core.one_gathers(finished, ratio))
    return _call.scalars("gathers", Gathers, ("finished", "ratio",), (finished, ratio,))


def girth_doubts(girth):
    """Doubts on the girth of a trunk: chest, waist or hip.

    Below 300 mm (`GIRTH_SMALL`) it is likely in centimetres or inches; above 2000 mm (`GIRTH_LARGE`) taken twice.

    Parameters
    ----------
    girth : array_like
        girth of chest, waist or hip (mm, 1 to 100000)

    Returns
    -------
    int
        The doubts (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Thresholds are common practice, no source, set well outside the 5th and 95th percentiles of chest, waist and hip,
    710 to 1207 mm, in Gordon et al., *2012 Anthropometric Survey of U.S. Army Personnel*, NATICK/TR-15/007, 2014.

    Example: girth_doubts(girth=852) gives 0
    """
    if type(girth) is float:
        return _core.one_girth_doubts(girth)
    return _call.scalars("girth_doubts", None, ("girth",), (girth,))


def godet(length, hem, count=1):
    """Sector for a godet of a given length and hem.

    `angle = hem / length` in radians, `chord = 2 · length · sin(angle / 2)`. Its two sides are as long as the slit; the
    hem is an arc, or it hangs in a point. A godet of more than half a ring is cut in two parts.

    Parameters
    ----------
    length : array_like
        slit from its point to the finished hem (mm, 1 to 10000)
    hem : array_like
        finished hem of one godet, along its arc (mm, 1 to 100000)
    count : array_like of int, default 1
        number of godets (1 to 64)

    Returns
    -------
    angle_deg : float
        Angle at the point (deg)
    chord : float
        Straight across the hem from side to side, which is the cloth's width that it takes (mm)
    sagitta : float
        How far the hem bows below that (mm)
    added : float
        What all godets add to the hem (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `hem` when it is more than half a ring.

    Notes
    -----
    Source: Arc length of a sector. `tests/vectors/godet.csv` has hand-worked rows.

    Example: godet(length=300, hem=471.24, count=4) gives angle_deg 90, chord 424.26, sagitta 87.87, added 1884.96
    """
    if type(length) is float and type(hem) is float and type(count) is int:
        return _new(Godet, _core.one_godet(length, hem, count))
    return _call.scalars("godet", Godet, ("length", "hem", "count",), (length, hem, count,))


def gore(waist, hip, hem, length, hip_depth, count):
    """Widths and side edges of one of several equal gores, straight from waist to hip and from hip to hem.

    Each width is the whole by the number of gores. A side edge runs over two slopes, `√(((hip - waist) / 2)² +
    hip_depth²) + √(((hem - hip) / 2)² + (length - hip_depth)²)` for widths of one gore, and is longer than the middle: the
    hem is curved up by `hem_rise` at its ends. The break at the hip is rounded off when the pattern is drawn.

    Waist, hip and length are doubted as the functions of `body` do, and a hip less than 50 mm below
    the waist.

    Parameters
    ----------
    waist : array_like
        finished waist, ease included (mm, 1 to 100000)
    hip : array_like
        finished hip, ease included (mm, 1 to 100000)
    hem : array_like
        finished way round the hem (mm, 1 to 1000000)
    length : array_like
        waist to hem along the middle of a gore (mm, 1 to 100000)
    hip_depth : array_like
        waist to hip along the middle of a gore (mm, 0 to 10000, < length)
    count : array_like of int
        number of gores (1 to 64)

    Returns
    -------
    waist_width : float
        Width at the waist (mm)
    hip_width : float
        Width at the hip (mm)
    hem_width : float
        Width at the hem (mm)
    side_length : float
        Length of each side edge, waist to hip to hem (mm)
    flare_deg : float
        Lean of each side edge below the hip; negative where it tapers in (deg)
    hem_rise : float
        What each side edge is longer than the middle, taken off at the hem's ends so that it hangs level (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `hip_depth` when it is not above the hem.

    Notes
    -----
    Source: Plane geometry. How far below the waist the hip lies is where authors differ, so `hip_depth` has no default: 5 to 7 in by
    L. I. Baldt, *Clothing for Women*, 1916, 6 in by I. D. Conover, *A Complete Course in Dressmaking*, v. 5, 7 in by *The New
    Dressmaker*, Butterick, 1921. On a gore flared as in the example the side edge changes by 0.2 mm from 5 to 7 in: it is the
    width there, not the length, that a slip spoils. `tests/vectors/gore.csv` has hand-worked rows.

    Example: gore(waist=720, hip=1020, hem=1980, length=700, hip_depth=200, count=6) gives waist_width 120, hip_width 170, hem_width 330, side_length 707.9, flare_deg 9.09, hem_rise 7.9, doubts 0
    """
    if type(waist) is float and type(hip) is float and type(hem) is float and type(length) is float and type(hip_depth) is float and type(count) is int:
        return _new(Gore, _core.one_gore(waist, hip, hem, length, hip_depth, count))
    return _call.scalars("gore", Gore, ("waist", "hip", "hem", "length", "hip_depth", "count",), (waist, hip, hem, length, hip_depth, count,))


def gsm_from_ounces(ounces):
    """Mass of cloth per square metre from ounces per square yard.

    `gsm = ounces · 33.9057`. Ounces *per running yard* are another thing: divide them by the width in yards first.

    Parameters
    ----------
    ounces : array_like
        ounces in one square yard (0.01 to 1000)

    Returns
    -------
    float
        Mass per area (gsm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Definitions of ounce and yard. NIST SP 811, appendix B.8 (3.390575e-2 kg/m2; figure from memory).

    Example: gsm_from_ounces(ounces=6) gives 203.4345
    """
    if type(ounces) is float:
        return _core.one_gsm_from_ounces(ounces)
    return _call.scalars("gsm_from_ounces", None, ("ounces",), (ounces,))


def gusset(slit, added, allowance=10.0):
    """Diamond gusset for two slits that meet in a seam, as under an arm.

    Its four sides are as long as the slits, its short diagonal is what the opened slits add across:
    `angle = 2 · asin(added / (2 · slit))`, `long_diagonal = √(4 · slit² - added²)`. Cut, an allowance all round makes the long
    way `2 · allowance / sin(angle / 2)` longer and the short way `2 · allowance / cos(angle / 2)`: sharp points need much
    cloth. Face the slit's end before it is cut, for it has no allowance there; cut last and only after a try in scrap cloth.
    The gusset lies on the bias where slits are on grain.

    Parameters
    ----------
    slit : array_like
        length of each slit, seam to its end (mm, 1 to 10000)
    added : array_like
        what is to be added across, where they meet (mm, 0.1 to 20000)
    allowance : array_like, default 10
        seam allowance all round the gusset (mm, 0 to 100)

    Returns
    -------
    angle_deg : float
        Angle at each slit's end (deg)
    long_diagonal : float
        From slit's end to slit's end (mm)
    cut_long : float
        Cut from point to point the long way, allowances included (mm)
    cut_short : float
        Cut from point to point the short way, allowances included (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `added` when it is as much as both slits.

    Notes
    -----
    Source: Plane geometry of a rhombus. `tests/vectors/gusset.csv` has hand-worked rows.

    Example: gusset(slit=100, added=120, allowance=10) gives angle_deg 73.7398, long_diagonal 160, cut_long 193.3333, cut_short 145
    """
    if type(slit) is float and type(added) is float and type(allowance) is float:
        return _new(Gusset, _core.one_gusset(slit, added, allowance))
    return _call.scalars("gusset", Gusset, ("slit", "added", "allowance",), (slit, added, allowance,))


def head_opening(head, neck, slit, ease=20.0):
    """Whether a neck with a slit passes over the head, and the least slit.

    A slit opens by its length on both sides: `neck + 2 · slit >= head + ease`. The same sum serves a skirt with a zip that
    must pass over the hip, with waist and hip for neck and head, where the skirt at the slit's end is no narrower. Measure
    the finished edge, not the neck of the body. For children no cords or drawstrings at the neck, no small loose buttons,
    no elastic round the throat: see the safety standards that hold where you are.

    A head below 300 mm or above 2000 mm and an edge below 110 mm are doubted: they may be in centimetres.

    Parameters
    ----------
    head : array_like
        girth that must pass (mm, 1 to 100000)
    neck : array_like
        finished way round the edge, not stretched (mm, 1 to 100000)
    slit : array_like
        length of the slit, button placket or zip (mm, 0 to 10000)
    ease : array_like, default 20
        what the opening should be wider (mm, 0 to 1000)

    Returns
    -------
    least_slit : float
        Least length of the slit; 0 where none is needed (mm)
    spare : float
        What the opening is wider than needed; negative when it does not pass (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic; the ease of 20 mm is common practice, no source. `tests/vectors/head_opening.csv` has hand-worked rows.

    Example: head_opening(head=520, neck=440, slit=60, ease=20) gives least_slit 50, spare 20, doubts 0
    """
    if type(head) is float and type(neck) is float and type(slit) is float and type(ease) is float:
        return _new(HeadOpening, _core.one_head_opening(head, neck, slit, ease))
    return _call.scalars("head_opening", HeadOpening, ("head", "neck", "slit", "ease",), (head, neck, slit, ease,))


def hem_let_down(hem_depth, turn_in, lowered_by, keep=20.0, seam=6.0):
    """What is left for a hem that is let down, and where its old crease and stitching will show.

    The old hem holds `hem_depth + turn_in` of cloth below its edge. Lowered by `lowered_by`, the new edge has
    `left = hem_depth + turn_in - lowered_by` for its hem; with less than `keep`, a facing is sewn on (a false hem), which
    needs `seam`. The old crease lies `lowered_by` above the new edge on the right side, and the old stitching
    `hem_depth + lowered_by`: a crease that has worn or faded stays, and is covered by a tuck, a braid or stitching, or the hem
    is left. Unpick and press a hand's breadth before deciding.

    Parameters
    ----------
    hem_depth : array_like
        depth of the old hem as it is sewn (mm, 0 to 1000)
    turn_in : array_like
        turned in at its raw edge; 0 where it is overcast (mm, 0 to 1000, <= hem_depth)
    lowered_by : array_like
        what the garment is to be longer (mm, 0 to 2000)
    keep : array_like, default 20
        least for a hem of its own, its turn included (mm, 0 to 1000)
    seam : array_like, default 6
        least for the seam of a facing (mm, 0 to 1000)

    Returns
    -------
    left : float
        Cloth left below the new edge for its hem or facing (mm)
    crease : float
        The old edge's crease above the new edge (mm)
    stitching : float
        The old hem's stitching above the new edge (mm)
    longest : float
        The most it can be lowered with a hem of its own (mm)
    longest_faced : float
        The most it can be lowered with a facing sewn on (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `turn_in` when it is deeper than the hem; naming
        `lowered_by` when not even a facing can be sewn on, with the most as `max`; naming `seam` when the old hem holds less.

    Notes
    -----
    Source: Arithmetic; what is least is common practice, no source. `tests/vectors/hem_let_down.csv` has hand-worked rows.

    Example: hem_let_down(hem_depth=50, turn_in=6, lowered_by=30, keep=20, seam=6) gives left 26, crease 30, stitching 80, longest 36, longest_faced 50
    """
    if type(hem_depth) is float and type(turn_in) is float and type(lowered_by) is float and type(keep) is float and type(seam) is float:
        return _new(HemLetDown, _core.one_hem_let_down(hem_depth, turn_in, lowered_by, keep, seam))
    return _call.scalars("hem_let_down", HemLetDown, ("hem_depth", "turn_in", "lowered_by", "keep", "seam",), (hem_depth, turn_in, lowered_by, keep, seam,))


def hem_on_curve(radius, depth, hem=1000.0):
    """Fullness to ease into a hem that is turned up on a flared edge.

    The raw edge lies at `radius + depth`; turned up it must lie at `radius - depth`. So it is too long by
    `100 · 2 · depth / (radius - depth)` percent of where it lies, and over a hem of length `hem` by
    `2 · depth · hem / radius`. Radius is that of the hem edge laid flat: `circle_skirt` or
    `arc_from_rise` give it.

    Parameters
    ----------
    radius : array_like
        radius of the finished hem edge, laid flat (mm, 1 to 1000000)
    depth : array_like
        depth of the hem (mm, 0 to 10000, < radius)
    hem : array_like, default 1000
        length of the finished hem edge (mm, 1 to 1000000)

    Returns
    -------
    excess_pct : float
        What the raw edge is longer than the line it lies on when turned up (%)
    excess : float
        The same over the whole hem, to be eased, shrunk or folded away (mm)
    raw_edge : float
        Length of the raw edge before turning (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `depth` when it reaches the centre.

    Notes
    -----
    Source: Arcs about one centre. T. Johnson, *It's Fun to Sew a Cotton School Dress*, gives 1 1/2 in for a flared skirt and 1/4 in
    or a rolled hem for a full circle, where by this sum (radius 761) 1/4 in leaves 1.7 % and 1 1/2 in would leave 10.5 %.

    Example: hem_on_curve(radius=840, depth=40, hem=2000) gives excess_pct 10, excess 190.476, raw_edge 2095.238
    """
    if type(radius) is float and type(depth) is float and type(hem) is float:
        return _new(HemOnCurve, _core.one_hem_on_curve(radius, depth, hem))
    return _call.scalars("hem_on_curve", HemOnCurve, ("radius", "depth", "hem",), (radius, depth, hem,))


def hip_waist_drop(hip, waist):
    """What the hip is larger than the waist, which may be less than nothing.

    `drop = hip - waist`. On a body whose waist is the larger there is nothing to dart: panels hang straight from the waist, or
    flare from the hip to it. What darts take in a panel there is follows from the panel, not from this
    (`dart_in_panel`).

    Parameters
    ----------
    hip : array_like
        girth of hip (mm, 1 to 100000)
    waist : array_like
        girth of waist (mm, 1 to 100000)

    Returns
    -------
    drop : float
        Hip less waist; negative where the waist is larger (mm)
    doubts : int
        Doubts raised, as by `waist_hip_doubts` (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic. From the data of Gordon et al., *2012 Anthropometric Survey of U.S. Army Personnel*, NATICK/TR-15/007: women
    57 to 252 mm, men -21 to 164 mm (5th and 95th percentiles), waist taken at the navel.

    Example: hip_waist_drop(hip=980, waist=720) gives drop 260, doubts 0
    """
    if type(hip) is float and type(waist) is float:
        return _new(HipWaistDrop, _core.one_hip_waist_drop(hip, waist))
    return _call.scalars("hip_waist_drop", HipWaistDrop, ("hip", "waist",), (hip, waist,))


def holes_left(edge, first, pitch):
    """Buttonholes left on an edge that is shortened.

    `count = floor((edge - first) / pitch) + 1`.

    Parameters
    ----------
    edge : array_like
        finished length of the edge after shortening (mm, 1 to 100000)
    first : array_like
        first hole from the end that stays (mm, 0 to 100000, <= edge)
    pitch : array_like
        from hole to hole (mm, 1 to 100000)

    Returns
    -------
    count : int
        Number of holes left
    last : float
        Place of the last of them, from the same end as the first (mm)
    to_end : float
        From the last hole to the new end of the edge (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `first` when it lies beyond the edge.

    Notes
    -----
    Source: Arithmetic; the 12 mm behind the doubt are common practice, no source. `tests/vectors/holes_left.csv` has hand-worked
    rows.

    Example: holes_left(edge=610, first=30, pitch=90) gives count 7, last 570, to_end 40, doubts 0
    """
    if type(edge) is float and type(first) is float and type(pitch) is float:
        return _new(HolesLeft, _core.one_holes_left(edge, first, pitch))
    return _call.scalars("holes_left", HolesLeft, ("edge", "first", "pitch",), (edge, first, pitch,))


def insert_strip(lacking, allowance, strips=1, place="seam"):
    """Strip to let into a garment for what is lacking in its width.

    Each strip must add its share, `lacking / strips`. In an opened seam the old edges are sewn on their old lines, and it
    shows just that. In a cut through the cloth both new edges lose an allowance, which the strip replaces as well:
    `finished = lacking / strips + 2 · allowance`. In both places `cut_width = finished + 2 · allowance`: a strip cut for a
    seam and let into a slash is two allowances short. Cut it on the garment's own grain, of cloth washed as often. What can
    be let out first, `let_out` says.

    Parameters
    ----------
    lacking : array_like
        what the garment is too narrow by, all round (mm, 0.1 to 10000)
    allowance : array_like
        seam allowance at each edge (mm, 0 to 1000)
    strips : array_like of int, default 1
        number of strips that share it (1 to 64)
    place : InsertPlace, default "seam"
        where they are let in

    Returns
    -------
    finished : float
        Width of each strip between its seam lines, as it shows (mm)
    cut_width : float
        Width to cut each strip (mm)
    cloth : float
        Cloth that all strips take side by side (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/insert_strip.csv` has hand-worked rows.

    Example: insert_strip(lacking=60, allowance=10, strips=2, place='seam') gives finished 30, cut_width 50, cloth 100
    """
    place = _call.choice(InsertPlace, place, "insert_strip", "place")
    if type(lacking) is float and type(allowance) is float and type(strips) is int:
        return _new(InsertStrip, _core.one_insert_strip(lacking, allowance, strips, place))
    return _call.scalars("insert_strip", InsertStrip, ("lacking", "allowance", "strips", "place",), (lacking, allowance, strips, place,))


def k_over_s(reflectance):
    """K/S, the depth of shade, of a reflectance.

    `K/S = (1 - R)² / (2 R)`. Depths add up where reflectances do not: cloth and dyes each give their own. Near black it grows
    without bounds, so small errors of R are large ones of K/S.

    Parameters
    ----------
    reflectance : array_like
        share of the light that comes back (0.001 to 1)

    Returns
    -------
    float
        K/S

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: E. Allen, "Colorant Formulation and Shading", in *Optical Radiation Measurements* vol. 2, Academic Press 1980, eq. 19.

    Example: k_over_s(reflectance=0.5) gives 0.25
    """
    if type(reflectance) is float:
        return _core.one_k_over_s(reflectance)
    return _call.scalars("k_over_s", None, ("reflectance",), (reflectance,))


def knife_pleats(finished, count, depth):
    """Cloth for knife pleats of a given number and depth.

    `flat = finished + 2 · count · depth`. The four functions of knife pleats each find one of `flat`, `finished`, `count`
    and `depth` from the others, and give the same answer. Tucks are the same sum.

    Parameters
    ----------
    finished : array_like
        width when pleated (mm, 1 to 1000000)
    count : array_like of int
        number of pleats (1 to 1000)
    depth : array_like
        depth of each pleat's underlay, fold to fold (mm, 0.1 to 10000)

    Returns
    -------
    flat : float
        Width before pleating, without allowances (mm)
    finished : float
        Width when pleated (mm)
    count : int
        Number of pleats
    show : float
        Width of each pleat that shows (mm)
    depth : float
        Depth of each pleat's underlay, fold to fold (mm)
    intake : float
        Cloth that each pleat takes up, twice its depth (mm)
    taken_up : float
        Cloth that all pleats take up (mm)
    ratio : float
        Flat over finished: 3 where pleats just touch
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: L. I. Baldt, *Clothing for Women*, 1916 (tucks: twice the depth times the number).

    Example: knife_pleats(finished=720, count=24, depth=30) gives flat 2160, finished 720, count 24, show 30, depth 30, intake 60, taken_up 1440, ratio 3, doubts 0
    """
    if type(finished) is float and type(depth) is float and type(count) is int:
        return _new(KnifePleats, _core.one_knife_pleats(finished, count, depth))
    return _call.scalars("knife_pleats", KnifePleats, ("finished", "count", "depth",), (finished, count, depth,))


def knife_pleats_count(flat, finished, depth):
    """Number of knife pleats of at least a given depth that bring cloth there is to a width.

    The whole number that `(flat - finished) / (2 · depth)` holds, and then the depth at which they take up exactly what
    there is: the depth wanted or a little more.

    Parameters
    ----------
    flat : array_like
        width before pleating, without allowances (mm, 1 to 100000000)
    finished : array_like
        width when pleated (mm, 1 to 1000000, < flat)
    depth : array_like
        least depth of each pleat's underlay (mm, 0.1 to 10000)

    Returns
    -------
    flat : float
        Width before pleating, without allowances (mm)
    finished : float
        Width when pleated (mm)
    count : int
        Number of pleats
    show : float
        Width of each pleat that shows (mm)
    depth : float
        Depth of each pleat's underlay, fold to fold (mm)
    intake : float
        Cloth that each pleat takes up, twice its depth (mm)
    taken_up : float
        Cloth that all pleats take up (mm)
    ratio : float
        Flat over finished: 3 where pleats just touch
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `finished` when nothing is left to pleat; naming
        `depth` when there is not enough for one pleat, or so much that there would be more than 1000.

    Notes
    -----
    Source: A booklet on draperies (pinch pleats: 91 in at 7 in each is 13). `tests/vectors/knife_pleats_count.csv`.

    Example: knife_pleats_count(flat=1500, finished=700, depth=30) gives flat 1500, finished 700, count 13, show 53.85, depth 30, intake 61.54, taken_up 800, ratio 2.14, doubts 0
    """
    if type(flat) is float and type(finished) is float and type(depth) is float:
        return _new(KnifePleats, _core.one_knife_pleats_count(flat, finished, depth))
    return _call.scalars("knife_pleats_count", KnifePleats, ("flat", "finished", "depth",), (flat, finished, depth,))


def knife_pleats_depth(flat, finished, count):
    """Depth of a given number of knife pleats that bring cloth there is to a width.

    `depth = (flat - finished) / (2 · count)`.

    Parameters
    ----------
    flat : array_like
        width before pleating, without allowances (mm, 1 to 100000000)
    finished : array_like
        width when pleated (mm, 1 to 1000000, < flat)
    count : array_like of int
        number of pleats (1 to 1000)

    Returns
    -------
    flat : float
        Width before pleating, without allowances (mm)
    finished : float
        Width when pleated (mm)
    count : int
        Number of pleats
    show : float
        Width of each pleat that shows (mm)
    depth : float
        Depth of each pleat's underlay, fold to fold (mm)
    intake : float
        Cloth that each pleat takes up, twice its depth (mm)
    taken_up : float
        Cloth that all pleats take up (mm)
    ratio : float
        Flat over finished: 3 where pleats just touch
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `finished` when nothing is left to pleat.

    Notes
    -----
    Source: I. D. Conover, *A Complete Course in Dressmaking*, vol. 5, 1921 (year from memory): in a pleated skirt, what is to be
    pleated away, shared by the pleats. `tests/vectors/knife_pleats_depth.csv` has its numbers.

    Example: knife_pleats_depth(flat=1500, finished=700, count=16) gives flat 1500, finished 700, count 16, show 43.75, depth 25, intake 50, taken_up 800, ratio 2.1429, doubts 0
    """
    if type(flat) is float and type(finished) is float and type(count) is int:
        return _new(KnifePleats, _core.one_knife_pleats_depth(flat, finished, count))
    return _call.scalars("knife_pleats_depth", KnifePleats, ("flat", "finished", "count",), (flat, finished, count,))


def knife_pleats_finished(flat, count, depth):
    """Width to which a given number of knife pleats brings cloth there is.

    `finished = flat - 2 · count · depth`.

    Parameters
    ----------
    flat : array_like
        width before pleating, without allowances (mm, 1 to 100000000)
    count : array_like of int
        number of pleats (1 to 1000)
    depth : array_like
        depth of each pleat's underlay, fold to fold (mm, 0.1 to 10000)

    Returns
    -------
    flat : float
        Width before pleating, without allowances (mm)
    finished : float
        Width when pleated (mm)
    count : int
        Number of pleats
    show : float
        Width of each pleat that shows (mm)
    depth : float
        Depth of each pleat's underlay, fold to fold (mm)
    intake : float
        Cloth that each pleat takes up, twice its depth (mm)
    taken_up : float
        Cloth that all pleats take up (mm)
    ratio : float
        Flat over finished: 3 where pleats just touch
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `depth` when the pleats take up all the cloth.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/knife_pleats_finished.csv` has hand-worked rows.

    Example: knife_pleats_finished(flat=2160, count=24, depth=30) gives flat 2160, finished 720, count 24, show 30, depth 30, intake 60, taken_up 1440, ratio 3, doubts 0
    """
    if type(flat) is float and type(depth) is float and type(count) is int:
        return _new(KnifePleats, _core.one_knife_pleats_finished(flat, count, depth))
    return _call.scalars("knife_pleats_finished", KnifePleats, ("flat", "count", "depth",), (flat, count, depth,))


def lab_from_srgb(red, green, blue):
    """CIELAB of a colour given by its screen levels, under daylight D65.

    Of cloth photographed: put a white card beside it, in the same even daylight, and bring the card to equal levels first.
    Without it the numbers are the lamp's and the camera's. Wet cloth is darker than dry.

    Parameters
    ----------
    red : array_like
        red level (0 to 255)
    green : array_like
        green level (0 to 255)
    blue : array_like
        blue level (0 to 255)

    Returns
    -------
    l : float
        Lightness L*: 0 is black, 100 white
    a : float
        a*: green below 0, red above
    b : float
        b*: blue below 0, yellow above

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: IEC 61966-2-1 (sRGB, matrix with four decimals) and CIE 15 (CIELAB). A matrix worked out from the primaries gives greys
    an a* and b* of 0, this one up to 0.01.

    Example: lab_from_srgb(red=192, green=160, blue=144) gives l 68.2864, a 9.3304, b 12.7525
    """
    if type(red) is float and type(green) is float and type(blue) is float:
        return _new(Lab, _core.one_lab_from_srgb(red, green, blue))
    return _call.scalars("lab_from_srgb", Lab, ("red", "green", "blue",), (red, green, blue,))


def lab_from_xyz(x, y, z, white_x=0.3127, white_y=0.329):
    """CIELAB of a colour given by its tristimulus values.

    The white is given by its chromaticity; its `Y` is 1.

    Parameters
    ----------
    x : array_like
        X (0 to 2)
    y : array_like
        Y, the luminance: white has 1 (0 to 2)
    z : array_like
        Z (0 to 2)
    white_x : array_like, default 0.3127
        chromaticity x of the white: daylight D65 (0.05 to 0.8)
    white_y : array_like, default 0.329
        chromaticity y of the white (0.05 to 0.8)

    Returns
    -------
    l : float
        Lightness L*: 0 is black, 100 white
    a : float
        a*: green below 0, red above
    b : float
        b*: blue below 0, yellow above

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `white_y` when both together leave no Z: they
        must sum to less than 1.

    Notes
    -----
    Source: CIE 15, *Colorimetry*, CIELAB (1976).

    Example: lab_from_xyz(x=0.20654008, y=0.12197225, z=0.05136952, white_x=0.3127, white_y=0.329) gives l 41.52787529, a 52.63858304, b 26.92317922
    """
    if type(x) is float and type(y) is float and type(z) is float and type(white_x) is float and type(white_y) is float:
        return _new(Lab, _core.one_lab_from_xyz(x, y, z, white_x, white_y))
    return _call.scalars("lab_from_xyz", Lab, ("x", "y", "z", "white_x", "white_y",), (x, y, z, white_x, white_y,))


def lacing(pairs, pitch, gap, tail=250.0):
    """Length of lace for a laced opening.

    Crosswise lacing, with one bar straight across at the start: each of the `pairs - 1` steps takes two slanting stretches,
    `lace = gap + 2 · (pairs - 1) · √(gap² + pitch²) + 2 · tail`. Give the gap at its widest, when the garment is put on, or the
    lace must be drawn out each time. No lace at a child's neck or hood.

    Parameters
    ----------
    pairs : array_like of int
        pairs of eyelets (1 to 100)
    pitch : array_like
        from eyelet to eyelet along one side (mm, 1 to 1000)
    gap : array_like
        across from eyelet to eyelet of a pair (mm, 0 to 10000)
    tail : array_like, default 250
        each end left over for a bow (mm, 0 to 10000)

    Returns
    -------
    float
        Length of lace (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Plane geometry; the thickness of cloth and lace is left out. The tail for a bow is common practice, no source.
    `tests/vectors/lacing.csv` has hand-worked rows.

    Example: lacing(pairs=9, pitch=30, gap=40, tail=250) gives 1340
    """
    if type(pitch) is float and type(gap) is float and type(tail) is float and type(pairs) is int:
        return _core.one_lacing(pairs, pitch, gap, tail)
    return _call.scalars("lacing", None, ("pairs", "pitch", "gap", "tail",), (pairs, pitch, gap, tail,))


def length_chain(lengths, factors, total, unknown):
    """The one unknown of a chain of lengths.

    The chain is `total = factor · length + factor · length + …`: a factor of 1 for a length that adds, -1 for a seam
    allowance that is lost, 2 for one that is lost or won on both edges, 0.5 for half a girth. `unknown` is the index of
    the length sought, or the number of lengths when the total is sought. What stands in the unknown's place is not used,
    but must be in range: write 0.

    Parameters
    ----------
    lengths : sequence of float
        the lengths (mm, 0 to 100000, 1 to 1000 items)
    factors : sequence of float
        how many times each counts, minus where lost (-100 to 100, as many as lengths)
    total : float
        what they come to (mm, 0 to 10000000000)
    unknown : int
        index of the length sought; their number: total (0 to 1000)

    Returns
    -------
    value : float
        The length sought (mm)
    plus : float
        What the known terms with a plus add up to (mm)
    minus : float
        What the known terms with a minus take away (mm)
    worst_per_mm : float
        How far the value is off at worst, for each mm that every known length may be off
    likely_per_mm : float
        How far the value is off in the usual case, for each mm that every known length may be off

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange` or `Count`, naming the argument. `NoSolution` naming `unknown`: there is no such length;
        `factors`: the one at the unknown is below 1e-6 either way; `total`: the answer would be negative, with the totals
        that would do (or the sum itself, where the total is sought).

    Notes
    -----
    Source: Arithmetic; errors as in `tolerance_stack`.

    Example: length_chain(lengths=[640, 10, 35], factors=[1, -1, 1], total=0, unknown=3) gives value 665, plus 675, minus 10, worst_per_mm 3, likely_per_mm 1.7321
    """
    lengths = _numbers.list_of(lengths, "length_chain", "lengths")
    factors = _numbers.list_of(factors, "length_chain", "factors")
    total = _numbers.number(total, "length_chain", "total")
    unknown = _numbers.number(unknown, "length_chain", "unknown")
    return _new(LengthChain, _core.one_length_chain(lengths, factors, total, unknown))


def length_chain_shares(lengths, factors, errors, total, unknown, total_error=0.0):
    """Each term's part in a chain of lengths and in its error.

    The chain and its unknown are those of `length_chain`; each length has besides how far it may be off. `parts` says
    what each term adds to the total, `factor · length`, minus where it is lost; the unknown's own part among them.
    `misses` says how far each term's error alone moves the unknown: `|factor| · error / |factor of the unknown|`. They add
    up to the worst case, the total's own among them; the unknown's own is 0. The largest of them is where a second
    measuring pays.

    Parameters
    ----------
    lengths : sequence of float
        the lengths (mm, 0 to 100000, 1 to 1000 items)
    factors : sequence of float
        how many times each counts, minus where lost (-100 to 100, as many as lengths)
    errors : sequence of float
        how far each may be off (mm, 0 to 1000, as many as lengths)
    total : float
        what they come to (mm, 0 to 10000000000)
    unknown : int
        index of the length sought; their number: total (0 to 1000)
    total_error : float, default 0
        how far the total may be off (mm, 0 to 1000)

    Returns
    -------
    parts : array
        what each adds to the total (mm)
    misses : array
        how far the error of each moves the unknown (mm)
    value : float
        The length sought (mm)
    worst : float
        How far it is off when every error falls the same way (mm)
    likely : float
        How far it is off when they fall by chance: the root of the sum of their squares (mm)
    largest : int
        Index of the term whose error moves it most, of equals the first; their number is the total
    largest_part : float
        What that term's error adds to the worst case (mm)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` as `length_chain`.

    Notes
    -----
    Source: Arithmetic; errors that fall by chance add as the root of the sum of their squares: JCGM 100:2008, *Guide to the
    expression of uncertainty in measurement*, 5.1.2. `tests/vectors/length_chain_shares.csv` has hand-worked rows.

    Example: length_chain_shares(lengths=[640, 10, 0], factors=[1, -2, 1], errors=[2, 1, 0], total=680, unknown=2, total_error=3) gives parts 640 -20 60, misses 2 2 0, value 60, worst 7, likely 4.1231, largest 3, largest_part 3
    """
    lengths = _numbers.list_of(lengths, "length_chain_shares", "lengths")
    factors = _numbers.list_of(factors, "length_chain_shares", "factors")
    errors = _numbers.list_of(errors, "length_chain_shares", "errors")
    total = _numbers.number(total, "length_chain_shares", "total")
    unknown = _numbers.number(unknown, "length_chain_shares", "unknown")
    total_error = _numbers.number(total_error, "length_chain_shares", "total_error")
    return _new(ChainShares, _core.one_length_chain_shares(lengths, factors, errors, total, unknown, total_error))


def let_out(garment, body, ease, allowance, edges=4, keep=5.0):
    """What to let out at each edge of a garment that is too narrow, and what is still short.

    `lacking = body + ease - garment`, shared evenly by the edges but no more than `allowance - keep` each. Look first: old seam
    lines, needle holes, a faded or worn fold and snips that reach into the allowance may show, and then it is worth nothing.

    A body below 110 mm, less than a child's wrist (from memory), is doubted.

    Parameters
    ----------
    garment : array_like
        finished garment at this level, all round (mm, 1 to 100000)
    body : array_like
        body at this level, all round (mm, 1 to 100000)
    ease : array_like
        what the garment is to have more than the body (mm, -10000 to 10000)
    allowance : array_like
        allowance there is inside each seam, sound cloth (mm, 0 to 1000)
    edges : array_like of int, default 4
        edges that can be let out, two to a seam (1 to 64)
    keep : array_like, default 5
        allowance that each edge must keep (mm, 0 to 1000, <= allowance)

    Returns
    -------
    lacking : float
        What the garment is too narrow by (mm)
    each : float
        Let out at each edge (mm)
    gained : float
        Let out at all edges together (mm)
    short_by : float
        Still lacking: a strip or a gusset must give it (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `garment` when it is wide enough already; naming `keep`
        when it is more than the allowance.

    Notes
    -----
    Source: Arithmetic; what must be kept is common practice, no source. `tests/vectors/let_out.csv` has hand-worked rows.

    Example: let_out(garment=700, body=720, ease=20, allowance=12, edges=4, keep=5) gives lacking 40, each 7, gained 28, short_by 12, doubts 0
    """
    if type(garment) is float and type(body) is float and type(ease) is float and type(allowance) is float and type(keep) is float and type(edges) is int:
        return _new(LetOut, _core.one_let_out(garment, body, ease, allowance, edges, keep))
    return _call.scalars("let_out", LetOut, ("garment", "body", "ease", "allowance", "edges", "keep",), (garment, body, ease, allowance, edges, keep,))


def level_line(hem_radius, height, hem_chord):
    """Line at an even height above a curved hem that is kept.

    Height is measured from the hem on its radius, so the line is an arc about the same centre: `radius = hem_radius -
    height`, its chord shrinks alike, and `sag = radius - √(radius² - chord² / 4)`. A straight cut through its ends would
    leave the panel too long by the sag in the middle; one through its middle, too short at the sides. Radius and chord of
    the hem come from `arc_from_rise`. The panel is a sector of less than half a ring.

    Parameters
    ----------
    hem_radius : array_like
        radius of the hem that is kept (mm, 1 to 1000000)
    height : array_like
        height of the line above the hem (mm, 0 to 100000, < hem_radius)
    hem_chord : array_like
        straight across from end to end of the hem (mm, 1 to 100000)

    Returns
    -------
    radius : float
        Radius of the line (mm)
    chord : float
        Straight across from end to end of the line (mm)
    sag : float
        How far the line bows below its chord (mm)
    length : float
        Length along the line (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `height` when it reaches the centre; naming
        `hem_chord` when it is more than twice the radius.

    Notes
    -----
    Source: Plane geometry. `tests/vectors/level_line.csv` has hand-worked rows.

    Example: level_line(hem_radius=1500, height=600, hem_chord=500) gives radius 900, chord 300, sag 12.6, length 301.4
    """
    if type(hem_radius) is float and type(height) is float and type(hem_chord) is float:
        return _new(LevelLine, _core.one_level_line(hem_radius, height, hem_chord))
    return _call.scalars("level_line", LevelLine, ("hem_radius", "height", "hem_chord",), (hem_radius, height, hem_chord,))


def linear_light(level):
    """Light of one screen level, as a share of the most.

    With `c = level / 255`: `c / 12.92` up to `c = 0.04045`, above it `((c + 0.055) / 1.055)^2.4`. Levels are not light: the
    middle level 128 has a fifth of it.

    Parameters
    ----------
    level : array_like
        red, green or blue of a picture (0 to 255)

    Returns
    -------
    float
        Share of the most light

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: IEC 61966-2-1 (sRGB).

    Example: linear_light(level=100) gives 0.12743768
    """
    if type(level) is float:
        return _core.one_linear_light(level)
    return _call.scalars("linear_light", None, ("level",), (level,))


def lining_free_length(length, clearance, hem):
    """Length to cut a lining that hangs free of the shell's hem, below its upper seam line.

    `length - clearance + hem`.

    Parameters
    ----------
    length : array_like
        finished shell, upper seam to hem edge (mm, 1 to 100000)
    clearance : array_like
        lining's hem edge above the shell's (mm, 0 to 10000, < length)
    hem : array_like
        all the cloth of the lining's own hem, turn included (mm, 0 to 10000)

    Returns
    -------
    float
        Upper seam line to the lower cut edge (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `clearance` when nothing of the lining is left.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/lining_free_length.csv` has hand-worked rows.

    Example: lining_free_length(length=560, clearance=20, hem=35) gives 575
    """
    if type(length) is float and type(clearance) is float and type(hem) is float:
        return _core.one_lining_free_length(length, clearance, hem)
    return _call.scalars("lining_free_length", None, ("length", "clearance", "hem",), (length, clearance, hem,))


def lining_length(length, hem_depth, clearance):
    """Length of a lining that hangs in a fold over the shell's hem.

    The fold ends `clearance` above the finished edge and runs back up to the top of the hem:
    `seam_to_seam = (length - clearance) + (hem_depth - clearance)`, `fold = hem_depth - clearance`. Width and shrinkage
    are other questions; a lining without walking room needs a slit.

    The length is doubted as `body_length_doubts` does.

    Parameters
    ----------
    length : array_like
        finished shell, upper seam to hem edge (mm, 1 to 100000)
    hem_depth : array_like
        finished depth of the shell's hem (mm, 0 to 10000, <= length)
    clearance : array_like
        lining's fold above the hem edge (mm, 0 to 10000, < hem_depth)

    Returns
    -------
    seam_to_seam : float
        Lining from its upper seam to the seam at the top of the hem, without allowances (mm)
    straight : float
        The shell's own distance between these two seams (mm)
    spare : float
        What the lining is longer by, which lies in the fold (mm)
    fold : float
        Depth of the fold, from the hem's top seam down (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `hem_depth` when the hem is deeper than the
        shell is long; naming `clearance` when no fold is left: then the lining hangs free (`lining_free_length`).

    Notes
    -----
    Source: Arithmetic on the fold's path; the construction is common practice, no source. `tests/vectors/lining_length.csv` has
    hand-worked rows.

    Example: lining_length(length=560, hem_depth=45, clearance=20) gives seam_to_seam 565, straight 515, spare 50, fold 25, doubts 0
    """
    if type(length) is float and type(hem_depth) is float and type(clearance) is float:
        return _new(LiningLength, _core.one_lining_length(length, hem_depth, clearance))
    return _call.scalars("lining_length", LiningLength, ("length", "hem_depth", "clearance",), (length, hem_depth, clearance,))


def lining_width(panel, facing=0.0, ease_pct=2.0, pleat=0.0):
    """Width to cut a lining panel that meets a facing.

    `width = (panel - facing) · (1 + ease_pct / 100) + pleat`, between seam lines: the lining must never be what strains, so it
    is wider than what it lines. A pleat at the centre back gives room to reach. Panels without a facing have `facing = 0`.

    Parameters
    ----------
    panel : array_like
        finished shell panel, seam line to edge (mm, 1 to 100000)
    facing : array_like, default 0
        finished facing, edge to the seam that joins the lining (mm, 0 to 100000, < panel)
    ease_pct : array_like, default 2
        what the lining is wider than what it lines (%, 0 to 50)
    pleat : array_like, default 0
        cloth of a pleat, both layers of its fold (mm, 0 to 10000)

    Returns
    -------
    float
        Width of the lining panel between seam lines (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `facing` when it is as wide as the panel.

    Notes
    -----
    Source: Arithmetic; the ease is common practice, no source. `tests/vectors/lining_width.csv` has hand-worked rows. What washing
    takes of shell and lining is another question: `shrink_pair`.

    Example: lining_width(panel=260, facing=60, ease_pct=2, pleat=0) gives 204
    """
    if type(panel) is float and type(facing) is float and type(ease_pct) is float and type(pleat) is float:
        return _core.one_lining_width(panel, facing, ease_pct, pleat)
    return _call.scalars("lining_width", None, ("panel", "facing", "ease_pct", "pleat",), (panel, facing, ease_pct, pleat,))


def liquor_shares(masses_g, pooled_ml, ratio):
    """A pooled liquor shared by dry mass, and the water that brings every bath to one liquor ratio.

    `share = pooled · mass / (sum of masses)`, topped up to `mass · ratio`. So all goods have the same dye for their mass in
    the same liquor; they still seldom match, as no two baths heat alike.

    Parameters
    ----------
    masses_g : sequence of float
        dry mass of each bath's goods (g, 0.01 to 1000000, 1 to 100 items)
    pooled_ml : float
        liquor to share (ml, 0 to 1000000000)
    ratio : float
        liquor to goods, by mass (1 to 200)

    Returns
    -------
    shares_ml : array
        pooled liquor for each bath (ml)
    waters_ml : array
        water added to each bath (ml)
    bath_ml : float
        All baths together, topped up (ml)
    water_ml : float
        Fresh water to top all of them up (ml)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange` or `Count`, naming the argument; `Room`. `NoSolution` naming `pooled_ml` when there is more of
        it than the ratio asks for.

    Notes
    -----
    Source: Proportion. `tests/vectors/liquor_shares.csv` has a hand-worked row.

    Example: liquor_shares(masses_g=[380, 170], pooled_ml=7000, ratio=20) gives shares_ml 4836.36 2163.64, waters_ml 2763.64 1236.36, bath_ml 11000, water_ml 4000, doubts 0, cautions 517
    """
    masses_g = _numbers.list_of(masses_g, "liquor_shares", "masses_g")
    pooled_ml = _numbers.number(pooled_ml, "liquor_shares", "pooled_ml")
    ratio = _numbers.number(ratio, "liquor_shares", "ratio")
    return _new(LiquorShares, _core.one_liquor_shares(masses_g, pooled_ml, ratio))


def loop_slack(length, diameter, thickness, cord, gap=0.0, stretch=0.0, shape="flat"):
    """Slack of a loop there is, or of one chosen, on a button.

    `slack = length - visible`, where `visible` is what `button_loop` gives for the same button.

    Parameters
    ----------
    length : array_like
        length of the loop that shows, not stretched (mm, 1 to 2000)
    diameter : array_like
        diameter of the button (mm, 1 to 200)
    thickness : array_like
        thickness of a flat button; not used for a ball (mm, 0 to 100)
    cord : array_like
        thickness of the cord (mm, 0 to 50)
    gap : array_like, default 0
        between the loop's two ends where they are sewn (mm, 0 to 500)
    stretch : array_like, default 0
        how much the cord may stretch: 0.3 is 30 % (0 to 3)
    shape : ButtonShape, default "flat"
        shape of the button

    Returns
    -------
    slack : float
        What the loop is longer than the one that just passes; negative when it is too short (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `gap` when it is as wide as the way round.

    Notes
    -----
    Source: Plane geometry; the 2 mm behind the doubt `LOOP_LOOSE` are common practice, no source. `tests/vectors/loop_slack.csv`
    has hand-worked rows.

    Example: loop_slack(length=28, diameter=10, thickness=3, cord=1.5, gap=4, stretch=0, shape='flat') gives slack 1.29, doubts 0
    """
    shape = _call.choice(ButtonShape, shape, "loop_slack", "shape")
    if type(length) is float and type(diameter) is float and type(thickness) is float and type(cord) is float and type(gap) is float and type(stretch) is float:
        return _new(LoopSlack, _core.one_loop_slack(length, diameter, thickness, cord, gap, stretch, shape))
    return _call.scalars("loop_slack", LoopSlack, ("length", "diameter", "thickness", "cord", "gap", "stretch", "shape",), (length, diameter, thickness, cord, gap, stretch, shape,))


def mix_temperature(volumes_ml, temperatures_c, goods_g=0.0, goods_temperature_c=20.0, goods_heat=1.3):
    """Temperature of liquors of several temperatures poured together, with the goods.

    `T = sum(m c T) / sum(m c)`, water and liquor at 4.18 J/(g °C) and a gram a millilitre. What the vessel takes is left
    out, so the bath comes out nearer the room's temperature than this: measure it. Pour hot into cold, slowly. Goods warmer
    than 40 °C are doubted (68 may be in Fahrenheit), and so is less than 50 ml in all.

    Parameters
    ----------
    volumes_ml : sequence of float
        volume of each liquor (ml, 0.01 to 100000000, 1 to 100 items)
    temperatures_c : sequence of float
        temperature of each (degC, 0 to 100, as many as volumes_ml)
    goods_g : float, default 0
        dry mass of the goods (g, 0 to 1000000)
    goods_temperature_c : float, default 20
        temperature of the goods (degC, 0 to 100)
    goods_heat : float, default 1.3
        specific heat of the goods, J/(g °C) (0.5 to 4.5)

    Returns
    -------
    temperature_c : float
        Temperature before the pot and the air have taken their part (degC)
    volume_ml : float
        Volume of liquor (ml)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange` or `Count`, naming the argument.

    Notes
    -----
    Source: Balance of heat. Cotton 1.22 to 1.35 J/(g °C): table of specific heats in a text on the physics of textile fibres. Water
    4.18: from memory. Wet goods: give the liquor they hold as one of the liquors. Where doubts begin: common practice, no
    source.

    Example: mix_temperature(volumes_ml=[3000, 1000], temperatures_c=[20, 100], goods_g=0, goods_temperature_c=20, goods_heat=1.3) gives temperature_c 40, volume_ml 4000, doubts 0, cautions 5
    """
    volumes_ml = _numbers.list_of(volumes_ml, "mix_temperature", "volumes_ml")
    temperatures_c = _numbers.list_of(temperatures_c, "mix_temperature", "temperatures_c")
    goods_g = _numbers.number(goods_g, "mix_temperature", "goods_g")
    goods_temperature_c = _numbers.number(goods_temperature_c, "mix_temperature", "goods_temperature_c")
    goods_heat = _numbers.number(goods_heat, "mix_temperature", "goods_heat")
    return _new(MixTemperature, _core.one_mix_temperature(volumes_ml, temperatures_c, goods_g, goods_temperature_c, goods_heat))


def nap_layout(wide, narrow, length, count, cloth_width):
    """Length of cloth for equal tapered panels with a nap and without.

    All one way up, each panel takes its wide end of the cloth's width: `floor(cloth_width / wide)` side by side. Turned
    every other, a narrow end lies beside each wide one and `n` panels take `wide + (n - 1) · (wide + narrow) / 2`. Either
    way a row takes the panel's length, and there are as many rows as the count asks. On napped cloth (velvet, corduroy,
    brushed cloth, some satins) and one-way prints a turned panel is of another shade: it cannot be put right afterwards. The
    habit of a quarter of a yard more for a nap is sometimes nothing and sometimes a whole row: count.

    Cloth below 200 mm is doubted: no cloth is woven so narrow (from memory).

    Parameters
    ----------
    wide : array_like
        width of a panel at its wide end, allowances included (mm, 1 to 100000)
    narrow : array_like
        width at its narrow end, allowances included (mm, 0 to 100000, <= wide)
    length : array_like
        length of a panel, allowances included (mm, 1 to 100000)
    count : array_like of int
        number of panels (1 to 1000)
    cloth_width : array_like
        width of the cloth between its selvedges (mm, 1 to 100000, >= wide)

    Returns
    -------
    across_one_way : int
        Panels side by side when all lie one way up
    across_turned : int
        Panels side by side when every other is turned upside down
    length_one_way : float
        Length of cloth when all lie one way up (mm)
    length_turned : float
        Length of cloth when every other is turned (mm)
    nap_extra : float
        What the nap takes: the one length less the other (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `narrow` when it is the wider end; naming
        `cloth_width` when one panel is wider.

    Notes
    -----
    Source: Plane geometry of trapezia with level ends; rows are not nested in each other. A quarter of a yard for one-way cloth:
    sewwithsarah.com. `tests/vectors/nap_layout.csv` has hand-worked rows.

    Example: nap_layout(wide=400, narrow=180, length=720, count=8, cloth_width=1400) gives across_one_way 3, across_turned 4, length_one_way 2160, length_turned 1440, nap_extra 720, doubts 0
    """
    if type(wide) is float and type(narrow) is float and type(length) is float and type(cloth_width) is float and type(count) is int:
        return _new(NapLayout, _core.one_nap_layout(wide, narrow, length, count, cloth_width))
    return _call.scalars("nap_layout", NapLayout, ("wide", "narrow", "length", "count", "cloth_width",), (wide, narrow, length, count, cloth_width,))


def neck_bust_doubts(neck, bust):
    """Doubts on a neck and a bust together.

    A neck of more than half the bust (`NECK_OVER_HALF_BUST`) may be the two in each other's place, or half a bust.

    Parameters
    ----------
    neck : array_like
        girth of neck (mm, 1 to 100000)
    bust : array_like
        girth of bust or chest (mm, 1 to 100000)

    Returns
    -------
    int
        The doubts (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Common practice, no source. The 95th percentile of neck is below half the 5th of chest, women 363 and 824 mm, men 443
    and 922 mm, in Gordon et al., *2012 Anthropometric Survey of U.S. Army Personnel*, NATICK/TR-15/007, 2014.

    Example: neck_bust_doubts(neck=328, bust=940) gives 0
    """
    if type(neck) is float and type(bust) is float:
        return _core.one_neck_bust_doubts(neck, bust)
    return _call.scalars("neck_bust_doubts", None, ("neck", "bust",), (neck, bust,))


def needle_blade(metric):
    """Blade of a machine needle, and the thickest thread for it, from its metric number.

    `blade = metric / 100`, `thread = 0.4 · blade`. A thread too thick for its needle frays and skips; a needle too thick for
    its cloth leaves holes that stay, which old seams of silk, leather and coated cloth show for ever. A broken needle can
    fly: change a bent one at once.

    Parameters
    ----------
    metric : array_like of int
        the larger number on a packet, 80 of 80/12 (20 to 300)

    Returns
    -------
    blade : float
        Diameter of the blade above the scarf (mm)
    thread : float
        Thickest thread that runs freely in its long groove (mm)

    Raises
    ------
    ReclothError
        `OutOfRange`, naming the argument.

    Notes
    -----
    Source: DIN 5325:1953 (the number), as told at apparelscience.com; a needle maker's dictionary, schmetzneedles.com, "long groove"
    (thread at most 40 % of the needle).

    Example: needle_blade(metric=75) gives blade 0.75, thread 0.3
    """
    if type(metric) is int:
        return _new(NeedleBlade, _core.one_needle_blade(metric))
    return _call.scalars("needle_blade", NeedleBlade, ("metric",), (metric,))


def needle_metric(us_size):
    """Metric number of a machine needle from its US size.

    `metric = 60 + 5 · (us_size - 8)`: 8 is 60, 11 is 75, 18 is 110. The number is the blade's diameter in hundredths of a
    millimetre (`needle_blade`). From 19 up the two scales no longer run together, so these sizes are not offered; read the
    packet.

    Parameters
    ----------
    us_size : array_like of int
        the smaller number on a packet (8 to 18)

    Returns
    -------
    float
        Metric number, hundredths of a millimetre

    Raises
    ------
    ReclothError
        `OutOfRange`, naming the argument.

    Notes
    -----
    Source: apparelscience.com, needle number system; pairs as commonly printed on packets. `tests/vectors/needle_metric.csv` has
    them all.

    Example: needle_metric(us_size=12) gives 80
    """
    if type(us_size) is int:
        return _core.one_needle_metric(us_size)
    return _call.scalars("needle_metric", None, ("us_size",), (us_size,))


def negative_ease(body, stretch_pct, widest=0.0, share=0.5):
    """Girth of a garment of stretching cloth, from the share of its stretch that wearing is to use.

    Worn, the garment is stretched to the body: `girth · (1 + share · stretch / 100) = body`. Taking `share · stretch`
    percent off the body's girth instead gives a smaller garment that uses more of the stretch than was meant. It must also
    go over the widest part on its way: `girth · (1 + stretch / 100)` must reach that. Seams and elastic stretch less than
    the cloth: try a stitch that gives.

    A body girth below 110 mm, less than a child's wrist (from memory), is doubted, and a stretch below 5 %: 0.5 may
    be a share.

    Parameters
    ----------
    body : array_like
        girth of the body where it is worn (mm, 10 to 100000)
    stretch_pct : array_like
        stretch of the cloth the way it goes round (%, 0 to 500)
    widest : array_like, default 0
        widest girth it is pulled over; 0: not asked (mm, 0 to 100000)
    share : array_like, default 0.5
        part of the stretch used in wear (0 to 1)

    Returns
    -------
    girth : float
        Finished girth of the garment at rest (mm)
    ease : float
        Girth less the body's, so negative (mm)
    furthest : float
        Furthest girth that the cloth stretches to (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `widest` when the cloth does not stretch so far:
        choose a smaller share, or an opening.

    Notes
    -----
    Source: Proportion. A share of one half is common practice, no source; swimwear uses more, a loose top less.

    Example: negative_ease(body=180, stretch_pct=50, widest=210, share=0.5) gives girth 144, ease -36, furthest 216, doubts 0
    """
    if type(body) is float and type(stretch_pct) is float and type(widest) is float and type(share) is float:
        return _new(NegativeEase, _core.one_negative_ease(body, stretch_pct, widest, share))
    return _call.scalars("negative_ease", NegativeEase, ("body", "stretch_pct", "widest", "share",), (body, stretch_pct, widest, share,))


def neutraliser(carried_ml, chlorine_pct, reaction, stage, in_bath, purity_pct=100.0, excess_pct=10.0):
    """Neutraliser for the chlorine that goods still carry after draining and rinsing.

    `amount = carried · chlorine / 100 · ratio · (1 + excess / 100) / (purity / 100)`. The ratio is that of the reaction named:
    for thiosulfate crystals 7.00, 3.50 or 0.875 by what it ends as, which strength and acidity decide, so the largest is the
    safe one. A test of field doses at pH 7 asked about a tenth more than the others' sums, hence the excess. Anhydrous
    thiosulfate: 0.637 times as much. It is a separate bath of fresh water, and rinsing well is the main thing: this is for
    the rest. Fibre is not asked here, as goods that ought never have met bleach need it most.

    Doubted are liquor of more than 0.1 % (rinse again first), peroxide of more than 50 % and any purity of 1 % or less, and
    an excess below 1 %.

    Parameters
    ----------
    carried_ml : array_like
        liquor that the goods carry after rinsing (ml, 0 to 1000000)
    chlorine_pct : array_like
        available chlorine in it, grams in 100 ml (%, 0 to 0.6)
    reaction : Reaction
        what takes the chlorine away, and to what
    stage : Stage
        how far the goods are from the bleach
    in_bath : InBath
        what else is in the fresh bath
    purity_pct : array_like, default 100
        share of the pure stuff: 3 for household peroxide (%, 0.1 to 100)
    excess_pct : array_like, default 10
        more than the reaction asks (%, 0 to 100)

    Returns
    -------
    chlorine_g : float
        Available chlorine the goods still carry (g)
    amount_g : float
        Neutraliser to weigh out, excess included (g)
    ratio : float
        Grams of the pure stuff for a gram of available chlorine, excess left out
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `Refused` naming `stage` unless the goods have been drained and rinsed;
        naming `in_bath` for anything but water: sulfite and thiosulfate with acid give sulfur dioxide.

    Notes
    -----
    Source: Molar masses. Hach support document TE213 (7.0 mg of thiosulfate crystals for 1 mg of chlorine). AWWA, *Disinfection of
    Pipelines and Storage Facilities Field Guide*, table 7-2 (field doses). Where doubts begin: common practice, no source.

    Example: neutraliser(carried_ml=500, chlorine_pct=0.02, reaction='thiosulfate_to_tetrathionate', stage='fresh_bath', in_bath='water_only', purity_pct=100, excess_pct=0) gives chlorine_g 0.1, amount_g 0.7, ratio 7, doubts 0, cautions 177
    """
    reaction = _call.choice(Reaction, reaction, "neutraliser", "reaction")
    stage = _call.choice(Stage, stage, "neutraliser", "stage")
    in_bath = _call.choice(InBath, in_bath, "neutraliser", "in_bath")
    if type(carried_ml) is float and type(chlorine_pct) is float and type(purity_pct) is float and type(excess_pct) is float:
        return _new(Neutraliser, _core.one_neutraliser(carried_ml, chlorine_pct, reaction, stage, in_bath, purity_pct, excess_pct))
    return _call.scalars("neutraliser", Neutraliser, ("carried_ml", "chlorine_pct", "reaction", "stage", "in_bath", "purity_pct", "excess_pct",), (carried_ml, chlorine_pct, reaction, stage, in_bath, purity_pct, excess_pct,))


def off_centre_opening(front, shift, extension, allowance, wide_panel, dart_distance):
    """Widths of two fronts whose button line is shifted to one side of the centre front.

    `narrow_to_line = front / 2 - shift + allowance` and `wide_to_line = front / 2 + shift + allowance`; the cut widths
    add the extension (the button stand; facings are not included). Say which side is narrow and which laps over: the
    sums are the same for both. The waistband's overlap must equal this extension. A sewing-machine manual asks for an
    extension of at least three quarters of the button's diameter.

    A front below 100 mm is doubted: it may be in centimetres.

    Parameters
    ----------
    front : array_like
        finished front, side seam to side seam (mm, 1 to 100000)
    shift : array_like
        button line from the centre front (mm, 0 to 100000)
    extension : array_like
        button stand, button line to the finished opening edge (mm, 0 to 1000)
    allowance : array_like
        seam allowance at the side seams (mm, 0 to 1000)
    wide_panel : array_like
        cloth there is for the wide front, button line to side cut edge (mm, 1 to 100000)
    dart_distance : array_like
        middle of each front's dart from the centre front; half the front where there is none (mm, 0 to 100000)

    Returns
    -------
    narrow_to_line : float
        Narrow front, button line to the cut edge at its side (mm)
    wide_to_line : float
        Wide front, button line to the cut edge at its side (mm)
    narrow_cut : float
        Narrow front, opening edge to the cut edge at its side (mm)
    wide_cut : float
        Wide front, opening edge to the cut edge at its side (mm)
    largest_shift : float
        Largest shift that the wide panel allows (mm)
    dart_to_narrow : float
        Dart from the narrow front's button line; negative beyond the line, towards the edge (mm)
    dart_to_wide : float
        Dart from the wide front's button line (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `wide_panel` when it is too narrow even without
        a shift; naming `shift` when the narrow front would vanish or the wide panel is too narrow, with the largest shift as
        `max`; naming `dart_distance` when the dart lies beyond the side seam.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/off_centre_opening.csv` has hand-worked rows. Least extension: sewing-machine manual, model
    1288.

    Example: off_centre_opening(front=380, shift=85, extension=18, allowance=10, wide_panel=300, dart_distance=90) gives narrow_to_line 115, wide_to_line 285, narrow_cut 133, wide_cut 303, largest_shift 100, dart_to_narrow 5, dart_to_wide 175, doubts 32768
    """
    if type(front) is float and type(shift) is float and type(extension) is float and type(allowance) is float and type(wide_panel) is float and type(dart_distance) is float:
        return _new(OffCentreOpening, _core.one_off_centre_opening(front, shift, extension, allowance, wide_panel, dart_distance))
    return _call.scalars("off_centre_opening", OffCentreOpening, ("front", "shift", "extension", "allowance", "wide_panel", "dart_distance",), (front, shift, extension, allowance, wide_panel, dart_distance,))


def overdye(ground, low, high):
    """Reflectance of cloth dyed over the colour it has, as a band from pale to deep.

    Depths of shade add up: `K/S = (K/S of the ground) + (K/S of the dye)`. Give the dye's as a low and a high, from swatches
    on white cloth of the same fibre: water, heat, mordant and the next batch all move it. Ask once for each of red, green
    and blue light. A dye only takes light away, so no part gets lighter. Not foretold: a fibre that takes dye otherwise, a
    finish, a ground that bleeds, hues that alkali or iron turn. Judge dry cloth, by daylight.

    Parameters
    ----------
    ground : array_like
        reflectance of the cloth as it is (0.001 to 1)
    low : array_like
        least that the dye adds, K/S (0 to 100)
    high : array_like
        most that the dye adds, K/S (0 to 100, >= low)

    Returns
    -------
    pale : float
        Reflectance where the dye takes least
    deep : float
        Reflectance where the dye takes most
    pale_l : float
        Lightness L* of a grey of the pale reflectance
    deep_l : float
        Lightness L* of a grey of the deep reflectance

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `high` when it is less than `low`.

    Notes
    -----
    Source: E. Allen, as for `k_over_s`; the sum of depths is the one-constant theory's.

    Example: overdye(ground=0.5, low=0.2, high=0.875) gives pale 0.4, deep 0.25, pale_l 69.47, deep_l 57.08
    """
    if type(ground) is float and type(low) is float and type(high) is float:
        return _new(Overdye, _core.one_overdye(ground, low, high))
    return _call.scalars("overdye", Overdye, ("ground", "low", "high",), (ground, low, high,))


def owf(mass_g, pct):
    """Mass of a dye, mordant or assistant from its percentage on weight of fibre.

    `amount = mass · pct / 100`, the mass being that of the dry goods. Say of a plant dyestuff whether it is weighed
    fresh, frozen or dry: the percentages differ by several times. Not for bleach, whose strength and time decide. Above 100 %
    or below 0.1 %, and for goods of less than 2 g, there are doubts.

    Parameters
    ----------
    mass_g : array_like
        dry mass of the goods (g, 0.01 to 1000000)
    pct : array_like
        percentage on weight of fibre (%, 0 to 1000)

    Returns
    -------
    amount_g : float
        Mass to weigh out (g)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: E. M. Mairet, *A Book on Vegetable Dyes*, 1916, and *Vegetable Dyes*, 1924 (recipes by weight of wool and cotton). Where doubts begin: common practice, no source.

    Example: owf(mass_g=380, pct=15) gives amount_g 57, doubts 0, cautions 3
    """
    if type(mass_g) is float and type(pct) is float:
        return _new(Owf, _core.one_owf(mass_g, pct))
    return _call.scalars("owf", Owf, ("mass_g", "pct",), (mass_g, pct,))


def panel_by_offsets(stations, left, right):
    """Area and sides of a panel measured at stations along a grain line, left and right of it.

    The fast way for an uneven or traced panel: draw one thread's line down it, mark stations, and measure square to the line to
    both edges. Between stations the sides are taken as straight, so put one at every corner and more where an edge curves; the
    area is the sum of trapeziums. `left_bow` and `right_bow` tell how far each station lies beyond (positive) or within the
    straight line between its side's ends, measured across as the readings are: a reading out of row is a slip of the tape, or a side that is no straight seam. What
    lies off the line makes every width wrong: check that the thread runs true.

    Parameters
    ----------
    stations : sequence of float
        places along the grain line, rising (mm, -100000 to 100000, 2 to 200 items)
    left : sequence of float
        from the line to the left edge at each (mm, 0 to 100000, as many as stations)
    right : sequence of float
        from the line to the right edge at each (mm, 0 to 100000, as many as stations)

    Returns
    -------
    left_bow : array
        left edge beyond its straight line; negative within (mm)
    right_bow : array
        right edge beyond its straight line (mm)
    area : float
        Area between the first and the last station (mm2)
    length : float
        From the first to the last station (mm)
    widest : float
        Greatest width at a station (mm)
    narrowest : float
        Least width at a station (mm)
    largest_bow : float
        Farthest that a side leaves the straight line between its ends, measured across (mm)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `stations` when one is not beyond the
        one before. `Outline` naming `right` when all widths are 0.

    Notes
    -----
    Source: Offsets from a base line and the trapezium rule, as in land surveying. `tests/vectors/panel_by_offsets.csv` has hand-worked
    rows.

    Example: panel_by_offsets(stations=[0, 200, 400, 600], left=[150, 160, 200, 210], right=[160, 180, 180, 220]) gives left_bow 0 -10 10 0, right_bow 0 0 -20 0, area 218000, length 600, widest 430, narrowest 310, largest_bow 20
    """
    stations = _numbers.list_of(stations, "panel_by_offsets", "stations")
    left = _numbers.list_of(left, "panel_by_offsets", "left")
    right = _numbers.list_of(right, "panel_by_offsets", "right")
    return _new(PanelByOffsets, _core.one_panel_by_offsets(stations, left, right))


def panel_by_triangles(base, starts, ends, from_start, from_end, sides, spare_starts, spare_ends, spare_readings):
    """Corners and area of a panel measured by tape in triangles, with its spare readings checked.

    Number the corners around the panel, from 0, in either direction; corner 1 is `base` from corner 0. Every further
    corner, in order, is read from two corners before it, `starts` and `ends`, and lies to the left (0) or right (1) as
    seen from the start towards the end. Any other distance between two corners is a spare reading: at least one, the
    other diagonal, tells a misread tape, and cloth that lay off grain.

    `along` and `across` get a place for each corner: corner 0 at 0, 0 and corner 1 at `base`, 0; left is positive across.
    `misfits` gets a length for each spare reading: as the corners have it, less the reading.

    Parameters
    ----------
    base : float
        from corner 0 to corner 1 (mm, 1 to 100000)
    starts : sequence of int
        corner the first reading is from (0 to 63, 1 to 62 items)
    ends : sequence of int
        corner the second reading is from (0 to 63, as many as starts)
    from_start : sequence of float
        first reading of each further corner (mm, 1 to 100000, as many as starts)
    from_end : sequence of float
        second reading of each further corner (mm, 1 to 100000, as many as starts)
    sides : sequence of int
        0 left, 1 right, seen from start to end (0 to 1, as many as starts)
    spare_starts : sequence of int
        one corner of each spare reading (0 to 63, 0 to 200 items)
    spare_ends : sequence of int
        the other corner (0 to 63, as many as spare_starts)
    spare_readings : sequence of float
        distance between them (mm, 1 to 100000, as many as spare_starts)

    Returns
    -------
    along : array
        each corner along the base (mm)
    across : array
        each corner square to it (mm)
    misfits : array
        what each spare reading misses (mm)
    area : float
        Area within the corners (mm2)
    perimeter : float
        Way round the corners (mm)
    largest_misfit : float
        Largest misfit of a spare reading, without its sign (mm)
    weakest_corner : int
        The corner whose own triangle holds it least
    weakest_per_mm : float
        How far that corner moves at worst along or across its base, for each mm that its readings are off
    doubts : int
        `TRIANGLE_FLAT` and `TRIANGLE_TALL` of any corner, `SPARE_MISFIT` when a spare reading misses by over 0.5 % (bits)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `starts` or `ends`: not a corner
        before this one, twice the same, or two in one place; `from_end`: no triangle, with the readings that make one;
        `sides`: the way round the corners crosses itself, most likely at this one; `spare_starts` or `spare_ends`: no such
        corner, or twice the same.

    Notes
    -----
    Source: Triangles as in `trilaterate`; area by the shoelace formula (Gauss). Spare readings to 0.5 %: common practice, no
    source.

    Example: panel_by_triangles(base=500, starts=[0], ends=[1], from_start=[300], from_end=[400], sides=[0], spare_starts=[0], spare_ends=[2], spare_readings=[301]) gives along 0 500 180, across 0 0 240, misfits -1, area 60000, perimeter 1200, largest_misfit 1, weakest_corner 2, weakest_per_mm 1.4, doubts 0
    """
    base = _numbers.number(base, "panel_by_triangles", "base")
    starts = _numbers.wholes_of(starts, "panel_by_triangles", "starts")
    ends = _numbers.wholes_of(ends, "panel_by_triangles", "ends")
    from_start = _numbers.list_of(from_start, "panel_by_triangles", "from_start")
    from_end = _numbers.list_of(from_end, "panel_by_triangles", "from_end")
    sides = _numbers.wholes_of(sides, "panel_by_triangles", "sides")
    spare_starts = _numbers.wholes_of(spare_starts, "panel_by_triangles", "spare_starts")
    spare_ends = _numbers.wholes_of(spare_ends, "panel_by_triangles", "spare_ends")
    spare_readings = _numbers.list_of(spare_readings, "panel_by_triangles", "spare_readings")
    return _new(PanelByTriangles, _core.one_panel_by_triangles(base, starts, ends, from_start, from_end, sides, spare_starts, spare_ends, spare_readings))


def parse_length(text):
    """A length as it is written.

    Whole and mixed numbers, fractions (`3/8`, `⅜`, `3⁄8`, `31-3/8`), a decimal point or comma, a leading minus sign
    for the whole. Units: mm, cm, m; in, `"`, ft, `'`, yd; their names in full, one or many; upper or lower case, so `M`
    is metres; a full stop after an abbreviation. Spaces of any width or none. Several units in one length, each once,
    larger first, all metric or all imperial: `2 ft 3 1/8 in`, `1 m 20 cm`.

    A number without a unit is refused, zero too, and so are thousands marks: `1,234` may be either. A fraction is less
    than one, for `313/8` is more likely `31 3/8` without its space. At most 64 characters.

    Metric lengths are correctly rounded; imperial ones are counted in inches, then multiplied by 25.4 once, so that
    `31 3/8 in` is `31.375 * INCH`.

    Parameters
    ----------
    text : str
        a length as written

    Returns
    -------
    float
        The length (mm)

    Raises
    ------
    ReclothError
        `Syntax`: it cannot be read, from the character at `at`. `NoUnit`: `value` has several readings. `TwoReadings`: a
        mark after which it may be `min` or `max`; if these are equal, it is a thousands mark. `OutOfRange`: the length is
        over 1e7 mm either way.

    Notes
    -----
    Source: 1 in = 25.4 mm, 1 ft = 12 in, 1 yd = 36 in, exact by the international yard and pound agreement of 1959.

    Example: parse_length(text='31 3/8 in') gives 796.925
    """
    text = _call.text_of(text, "parse_length", "text")
    return _core.one_parse_length(text)


def photo_map(picture_x, picture_y, true_x, true_y, x, y):
    """True places of points in a photograph of cloth that lies flat beside a reference of four known points.

    The picture of a plane is its projective map, and four points fix it: the corners of a sheet of paper of known size, say,
    given in order round it in the picture and in the same order as they truly lie. `along` and `across` get the true place of
    each point, `scales` the length that one picture unit stands for there, `√` of the map's change of area. Only what lies
    flat in the reference's own plane is mapped truly, and the bow that a lens gives straight lines is not taken out: stand
    back, point the camera straight down, use the middle of the picture. Beyond the reference errors grow fast: a slip of
    1 picture unit at a corner moves a point one size away by several. Measure one length by tape to see.

    Parameters
    ----------
    picture_x : sequence of float
        reference in the picture, in pixels or any unit (-100000 to 100000, 4 to 4 items)
    picture_y : sequence of float
        the same, up or down (-100000 to 100000, 4 to 4 items)
    true_x : sequence of float
        reference as it truly lies, along (mm, -100000 to 100000, 4 to 4 items)
    true_y : sequence of float
        the same, across (mm, -100000 to 100000, 4 to 4 items)
    x : sequence of float
        points to map, in the picture (-1000000 to 1000000, 1 to 1000 items)
    y : sequence of float
        the same, up or down (-1000000 to 1000000, as many as x)

    Returns
    -------
    along : array
        true place of each point, along (mm)
    across : array
        true place of each point, across (mm)
    scales : array
        length that one picture unit stands for there (mm)
    reach : float
        Farthest that a point lies beyond the reference, in sizes of the reference in that direction
    coarsest : float
        Largest length that one picture unit stands for at a point (mm)
    doubts : int
        `PHOTO_REACH` when a point lies more than 1.5 sizes beyond the reference (bits)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `picture_x` or `true_x` when three of
        the four points lie in line, or they are not in order round a figure that bulges at every corner; naming `x` when a point
        lies on or beyond the horizon of the picture.

    Notes
    -----
    Source: P. Heckbert, *Fundamentals of Texture Mapping and Image Warping*, 1989 (square to quadrilateral; from memory).
    `tests/vectors/photo_map.csv` has hand-worked rows.

    Example: photo_map(picture_x=[0, 400, 300, 100], picture_y=[0, 0, 300, 300], true_x=[0, 200, 200, 0], true_y=[0, 0, 300, 300], x=[200], y=[200]) gives along 100, across 150, reach 0, doubts 0
    """
    picture_x = _numbers.list_of(picture_x, "photo_map", "picture_x")
    picture_y = _numbers.list_of(picture_y, "photo_map", "picture_y")
    true_x = _numbers.list_of(true_x, "photo_map", "true_x")
    true_y = _numbers.list_of(true_y, "photo_map", "true_y")
    x = _numbers.list_of(x, "photo_map", "x")
    y = _numbers.list_of(y, "photo_map", "y")
    return _new(PhotoMap, _core.one_photo_map(picture_x, picture_y, true_x, true_y, x, y))


def pieced_length(lengths, allowance, needed):
    """Length that scraps give when they are joined end to end, and how few of them reach.

    Each join takes an allowance off both its scraps: `joined = sum of lengths - 2 · allowance · (scraps - 1)`. Two allowances
    a join are easily forgotten, and then the strip is short when it is too late. Count in `needed` what its own ends take.
    Keep joins off dart points, pockets and the middle of a back; under a band, in gathers or at a seam they are not seen.
    Grain, face and nap must run alike in all scraps.

    Parameters
    ----------
    lengths : sequence of float
        the scraps, raw edge to raw edge (mm, 1 to 100000, 1 to 100 items)
    allowance : float
        seam allowance at each edge of a join (mm, 0 to 1000)
    needed : float
        length needed, allowances of its ends included (mm, 1 to 1000000)

    Returns
    -------
    joined : float
        Length of all scraps joined, free ends raw (mm)
    spare : float
        What that is longer than needed; negative when it does not reach (mm)
    joins : int
        Number of joins when all are used
    fewest : int
        Fewest scraps that reach, the longest taken first; 0 when all together do not

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange` or `Count`, naming the argument. `NoSolution` naming `lengths` and the scrap that two allowances
        would swallow: leave it out.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/pieced_length.csv` has hand-worked rows.

    Example: pieced_length(lengths=[420, 260], allowance=10, needed=640) gives joined 660, spare 20, joins 1, fewest 2
    """
    lengths = _numbers.list_of(lengths, "pieced_length", "lengths")
    allowance = _numbers.number(allowance, "pieced_length", "allowance")
    needed = _numbers.number(needed, "pieced_length", "needed")
    return _new(PiecedLength, _core.one_pieced_length(lengths, allowance, needed))


def piping_width(cord, allowance, thickness=0.0):
    """Width of the strip that covers a cord for piping.

    `π · (cord + thickness) + 2 · allowance`: once round the cord in the middle of the cloth, and an allowance on both sides.
    Stitched close to the cord, it is a little more than is covered, which the stitching needs. Shrink cotton cord first.

    Parameters
    ----------
    cord : array_like
        diameter of the cord (mm, 0 to 200)
    allowance : array_like
        seam allowance beside it (mm, 0 to 1000)
    thickness : array_like, default 0
        thickness of the strip's cloth (mm, 0 to 20)

    Returns
    -------
    float
        Width to cut, square to the edges (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `allowance` when there is neither cord nor allowance.

    Notes
    -----
    Source: Plane geometry. `tests/vectors/piping_width.csv` has hand-worked rows.

    Example: piping_width(cord=4, allowance=10, thickness=0) gives 32.566
    """
    if type(cord) is float and type(allowance) is float and type(thickness) is float:
        return _core.one_piping_width(cord, allowance, thickness)
    return _call.scalars("piping_width", None, ("cord", "allowance", "thickness",), (cord, allowance, thickness,))


def plant_dyestuff(mass_g, low_pct, high_pct, recipe, at_hand, fresh_per_dry_low=3.0, fresh_per_dry_high=8.0):
    """Plant matter for a dye bath, as a range, from a recipe weighed fresh or dry.

    `mass · pct / 100`, low and high; where the recipe weighs it otherwise than it is at hand, turned by the range of fresh
    to dry. Frozen counts as fresh. Season, soil, part of the plant and water decide the colour more than the scale: dye a
    swatch. More extractions of the same matter give paler baths of another hue, so they are not added up here. Not every
    plant is harmless: know what it is, never cook it in vessels for food. Below 1 %, above 100 % of what is dry at hand, and
    for goods of less than 2 g, there are doubts.

    Parameters
    ----------
    mass_g : array_like
        dry mass of the goods (g, 0.01 to 1000000)
    low_pct : array_like
        percentage on weight of fibre, least (%, 0.1 to 2000)
    high_pct : array_like
        percentage on weight of fibre, most (%, 0.1 to 2000, >= low_pct)
    recipe : Basis
        how the recipe weighs it
    at_hand : Basis
        how it is at hand
    fresh_per_dry_low : array_like, default 3
        grams fresh that dry to one, least (1 to 20)
    fresh_per_dry_high : array_like, default 8
        grams fresh that dry to one, most (1 to 20, >= fresh_per_dry_low)

    Returns
    -------
    low_g : float
        Least to weigh out, as it is at hand (g)
    high_g : float
        Most to weigh out, as it is at hand (g)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming the high of a range that is less than its low.

    Notes
    -----
    Source: Arithmetic. Percentages: E. M. Mairet, *A Book on Vegetable Dyes*, 1916 (madder 50 % on wool, bark 100 %); twice the
    fibre's mass of fresh leaves: northernwisconsin.com. 3 to 8 g fresh to one dry: from memory, common practice; weigh,
    dry and weigh again to know yours.

    Example: plant_dyestuff(mass_g=400, low_pct=50, high_pct=100, recipe='dry', at_hand='fresh', fresh_per_dry_low=3, fresh_per_dry_high=8) gives low_g 600, high_g 3200, doubts 0, cautions 7
    """
    recipe = _call.choice(Basis, recipe, "plant_dyestuff", "recipe")
    at_hand = _call.choice(Basis, at_hand, "plant_dyestuff", "at_hand")
    if type(mass_g) is float and type(low_pct) is float and type(high_pct) is float and type(fresh_per_dry_low) is float and type(fresh_per_dry_high) is float:
        return _new(PlantDyestuff, _core.one_plant_dyestuff(mass_g, low_pct, high_pct, recipe, at_hand, fresh_per_dry_low, fresh_per_dry_high))
    return _call.scalars("plant_dyestuff", PlantDyestuff, ("mass_g", "low_pct", "high_pct", "recipe", "at_hand", "fresh_per_dry_low", "fresh_per_dry_high",), (mass_g, low_pct, high_pct, recipe, at_hand, fresh_per_dry_low, fresh_per_dry_high,))


def pooled_strength(volumes_ml, strengths_pct):
    """Strength of several liquors of one and the same stuff poured together.

    `strength = sum(volume · strength) / sum(volume)`. Only for liquors of the same dye, mordant or binder: nothing is ever
    poured to bleach, and unlike baths are not mixed to be rid of them.

    Parameters
    ----------
    volumes_ml : sequence of float
        volume of each liquor (ml, 0.01 to 100000000, 1 to 100 items)
    strengths_pct : sequence of float
        strength of each (%, 0 to 100, as many as volumes_ml)

    Returns
    -------
    strength_pct : float
        Strength, in the unit of the strengths given (%)
    volume_ml : float
        Volume (ml)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange` or `Count`, naming the argument.

    Notes
    -----
    Source: Balance of mass, volumes taken to add up.

    Example: pooled_strength(volumes_ml=[4000, 3000], strengths_pct=[0.5, 1.2]) gives strength_pct 0.8, volume_ml 7000, cautions 35
    """
    volumes_ml = _numbers.list_of(volumes_ml, "pooled_strength", "volumes_ml")
    strengths_pct = _numbers.list_of(strengths_pct, "pooled_strength", "strengths_pct")
    return _new(PooledStrength, _core.one_pooled_strength(volumes_ml, strengths_pct))


def puff_spread(zone, ratio, slashes, strip=0.0):
    """Spread of a sleeve cap that is slashed and opened for gathers between two notches.

    `flat = zone · ratio`, `spread_each = (flat - zone) / slashes`. Where the sleeve is cut already, a strip is let in instead,
    on the sleeve's own grain: one as wide as `strip` allows a ratio of `(zone + strip) / zone`. A sleeve still to be cut needs
    none. How much the cap is raised as well is taste: fold it in paper first.

    Parameters
    ----------
    zone : array_like
        seam line between the notches, where the gathers go (mm, 1 to 10000)
    ratio : array_like
        zone after spreading over before (1 to 10)
    slashes : array_like of int
        number of slashes (1 to 100)
    strip : array_like, default 0
        cloth there is to let in, allowances taken off; 0: none (mm, 0 to 100000)

    Returns
    -------
    flat : float
        Zone after spreading, before gathering (mm)
    added : float
        What spreading adds in all (mm)
    spread_each : float
        How far each slash opens (mm)
    strip_ratio : float
        The ratio that the strip to be let in allows
    doubts : int
        `GATHERS_SCANT` or `GATHERS_LARGE` when the smaller of the ratios asked for looks like a mistake (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic; the doubt below 1.2 is common practice, no source. `tests/vectors/puff_spread.csv` has hand-worked rows.

    Example: puff_spread(zone=240, ratio=1.75, slashes=6, strip=100) gives flat 420, added 180, spread_each 30, strip_ratio 1.4167, doubts 0
    """
    if type(zone) is float and type(ratio) is float and type(strip) is float and type(slashes) is int:
        return _new(PuffSpread, _core.one_puff_spread(zone, ratio, slashes, strip))
    return _call.scalars("puff_spread", PuffSpread, ("zone", "ratio", "slashes", "strip",), (zone, ratio, slashes, strip,))


def reflectance(k_over_s):
    """Reflectance of a depth of shade K/S: `k_over_s` turned round.

    `R = 1 + K/S - √((K/S)² + 2 K/S)`, worked as the reciprocal of `1 + K/S + √(...)`, which loses no digits near black.

    Parameters
    ----------
    k_over_s : array_like
        depth of shade (0 to 500)

    Returns
    -------
    float
        Reflectance

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: E. Allen, "Colorant Formulation and Shading", in *Optical Radiation Measurements* vol. 2, Academic Press 1980, eq. 20.

    Example: reflectance(k_over_s=0.25) gives 0.5
    """
    if type(k_over_s) is float:
        return _core.one_reflectance(k_over_s)
    return _call.scalars("reflectance", None, ("k_over_s",), (k_over_s,))


def relative_strength(k_over_s, standard):
    """Strength of a dyeing against another, by their depths of shade, in percent.

    Parameters
    ----------
    k_over_s : array_like
        depth of shade of the dyeing (0 to 500)
    standard : array_like
        depth of shade it is held against (0.000001 to 500)

    Returns
    -------
    float
        Relative strength (%)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Common practice in dye houses: the ratio of K/S, both measured at the same wavelength.

    Example: relative_strength(k_over_s=17.46, standard=11.85) gives 147.34
    """
    if type(k_over_s) is float and type(standard) is float:
        return _core.one_relative_strength(k_over_s, standard)
    return _call.scalars("relative_strength", None, ("k_over_s", "standard",), (k_over_s, standard,))


def remaining_width(girth, ease, other_width, parts=1, intake=0.0):
    """Width of the panels still to be made, when the others are given.

    `remaining = (girth + ease - other_width) / parts + intake`, inside the seams: what the given panels leave of the
    girth, shared over the rest, and the darts or pleats of each added.

    For doubts on the girth see `girth_doubts`.

    Parameters
    ----------
    girth : array_like
        girth of the body (mm, 1 to 100000)
    ease : array_like
        what the garment has more (mm, -10000 to 10000)
    other_width : array_like
        the given panels together, inside seams and darts (mm, 0 to 100000)
    parts : array_like of int, default 1
        number of panels still to be made, all equal (1 to 64)
    intake : array_like, default 0
        darts or pleats in each of them (mm, 0 to 10000)

    Returns
    -------
    float
        The width of each remaining panel inside the seams (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `ease`: it takes the whole girth away;
        `other_width`: the given panels leave nothing.

    Notes
    -----
    Source: Arithmetic; `tests/vectors/remaining_width.csv` has published rows.

    Example: remaining_width(girth=720, ease=20, other_width=410, parts=2, intake=25) gives 190
    """
    if type(girth) is float and type(ease) is float and type(other_width) is float and type(intake) is float and type(parts) is int:
        return _core.one_remaining_width(girth, ease, other_width, parts, intake)
    return _call.scalars("remaining_width", None, ("girth", "ease", "other_width", "parts", "intake",), (girth, ease, other_width, parts, intake,))


def repeats(length, repeat, count=1):
    """Lengths rounded up to whole repeats of the pattern, so that all of them begin at the same place in it.

    `each = repeat · ceil(length / repeat)`. The first cut may have to move to where the pattern is wanted: buy one repeat
    more than the total.

    Parameters
    ----------
    length : array_like
        length needed, allowances included (mm, 1 to 100000)
    repeat : array_like
        height of the pattern's repeat (mm, 1 to 10000)
    count : array_like of int, default 1
        how many lengths (1 to 1000)

    Returns
    -------
    repeats : int
        Whole repeats in one length
    each : float
        Length to cut each (mm)
    total : float
        All lengths together (mm)
    waste : float
        What is cut off and lies idle, all lengths together (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic; common practice, no source. One repeat more: sew4home.com.

    Example: repeats(length=720, repeat=320, count=4) gives repeats 3, each 960, total 3840, waste 960
    """
    if type(length) is float and type(repeat) is float and type(count) is int:
        return _new(Repeats, _core.one_repeats(length, repeat, count))
    return _call.scalars("repeats", Repeats, ("length", "repeat", "count",), (length, repeat, count,))


def ribbing(edge, depth, allowance, share=0.8):
    """Strip of ribbing for a neck, a cuff or a waist.

    `round = edge · share`, joined with an allowance at both ends; folded along its middle, `cut_width = 2 · depth + 2 ·
    allowance`. A round neck takes less than a waist, lest it stand away. Ribbings differ: pin a strip round the edge first.
    A neck must still pass over the head, see
    `head_opening`.

    Parameters
    ----------
    edge : array_like
        edge that it is sewn to (mm, 1 to 100000)
    depth : array_like
        finished depth (mm, 1 to 1000)
    allowance : array_like
        seam allowance at each edge and end (mm, 0 to 100)
    share : array_like, default 0.8
        strip over edge (0.3 to 1)

    Returns
    -------
    round : float
        Way round the joined strip, not stretched (mm)
    cut_length : float
        Length to cut, along the way it stretches (mm)
    cut_width : float
        Width to cut, folded in two when sewn (mm)
    stretch_pct : float
        Stretch that it is sewn on with (%)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic; a share of 0.75 to 0.9 is common practice, no source. `tests/vectors/ribbing.csv` has hand-worked rows.

    Example: ribbing(edge=250, depth=60, allowance=7, share=0.8) gives round 200, cut_length 214, cut_width 134, stretch_pct 25
    """
    if type(edge) is float and type(depth) is float and type(allowance) is float and type(share) is float:
        return _new(Ribbing, _core.one_ribbing(edge, depth, allowance, share))
    return _call.scalars("ribbing", Ribbing, ("edge", "depth", "allowance", "share",), (edge, depth, allowance, share,))


def rinses(carried_low_ml, carried_high_ml, fresh_ml, share_left=0.01):
    """Rinses that thin the liquor carried over to a share of what it was, as a range.

    Each rinse leaves `carried / (carried + fresh)` of it. What the goods carry between rinses is the main term and is never
    known well: give a low and a high. It tells of the liquor between the fibres only; what the fibre itself holds leaves
    in its own time, so rinse until the water runs clear, or has no smell, whatever is printed here. Less fresh water than the
    goods carry is doubted (litres?), and so is a share above a half (1 for 1 %?). The first rinse after a hot bath is warm.

    Parameters
    ----------
    carried_low_ml : array_like
        least liquor carried from bath to bath (ml, 0.01 to 10000000)
    carried_high_ml : array_like
        most liquor carried (ml, 0.01 to 10000000, >= carried_low_ml)
    fresh_ml : array_like
        fresh water each rinse (ml, 0.01 to 100000000)
    share_left : array_like, default 0.01
        share of the liquor that may be left (0.000000001 to 1)

    Returns
    -------
    rinses_low : int
        Rinses where the goods carry least
    rinses_high : int
        Rinses where the goods carry most
    left : float
        Share of the first liquor left after the most rinses, where the goods carry most
    water_ml : float
        Fresh water for the most rinses (ml)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `carried_high_ml` when it is less than the low;
        naming `fresh_ml` when more than 100 rinses would be needed.

    Notes
    -----
    Source: Balance of mass, each rinse fully mixed. `tests/vectors/rinses.csv` has hand-worked rows.

    Example: rinses(carried_low_ml=300, carried_high_ml=1000, fresh_ml=5000, share_left=0.01) gives rinses_low 2, rinses_high 3, left 0.00463, water_ml 15000, doubts 0, cautions 5
    """
    if type(carried_low_ml) is float and type(carried_high_ml) is float and type(fresh_ml) is float and type(share_left) is float:
        return _new(Rinses, _core.one_rinses(carried_low_ml, carried_high_ml, fresh_ml, share_left))
    return _call.scalars("rinses", Rinses, ("carried_low_ml", "carried_high_ml", "fresh_ml", "share_left",), (carried_low_ml, carried_high_ml, fresh_ml, share_left,))


def round_set(lengths, graduation=1.0):
    """Lengths rounded so that the rounded lengths add up to the rounded sum.

    Each is rounded down; what is then missing from the rounded sum is given, a graduation each, to the lengths that lost
    most, of equals to the earlier. Where two edges are sewn together, round one and give the other the same lengths.

    Parameters
    ----------
    lengths : sequence of float
        the lengths (mm, 0 to 100000, 1 to 1000 items)
    graduation : float, default 1
        distance between two marks: 3.175 is 1/8 in (mm, 0.001 to 10000)

    Returns
    -------
    tapes : array
        the rounded lengths (mm)
    total : float
        Sum of the rounded lengths, which is the rounded sum (mm)
    largest_change : float
        Most that any length was changed, up or down (mm)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange` or `Count`, naming the argument; `Room` when `tapes` is too short.

    Notes
    -----
    Source: The method of largest remainders (Hamilton), as used to share out whole seats by votes.

    Example: round_set(lengths=[10.4, 10.4, 10.2], graduation=1) gives tapes 11 10 10, total 31, largest_change 0.6
    """
    lengths = _numbers.list_of(lengths, "round_set", "lengths")
    graduation = _numbers.number(graduation, "round_set", "graduation")
    return _new(RoundedSet, _core.one_round_set(lengths, graduation))


def round_to(length, graduation=1.0, way="nearest"):
    """A length rounded to a graduation of the tape.

    A length within a thousand-millionth of a graduation, or of the middle between two, counts as being there: binary
    arithmetic leaves that much dust.

    Parameters
    ----------
    length : array_like
        the length (mm, -10000000 to 10000000)
    graduation : array_like, default 1
        distance between two marks: 3.175 is 1/8 in (mm, 0.001 to 10000)
    way : Rounding, default "nearest"
        which graduation

    Returns
    -------
    float
        The rounded length (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Common practice, no source: to the nearest mark for a seam, up for cloth to buy, down for cloth there is.

    Example: round_to(length=796, graduation=3.175, way='nearest') gives 796.925
    """
    way = _call.choice(Rounding, way, "round_to", "way")
    if type(length) is float and type(graduation) is float:
        return _core.one_round_to(length, graduation, way)
    return _call.scalars("round_to", None, ("length", "graduation", "way",), (length, graduation, way,))


def ruffle(edge, ratio, depth, strip, allowance, hem):
    """Strips to cut for a ruffle along an edge.

    `flat = edge · ratio`, `cut_width = depth + allowance + hem`, and as many strips as their length, less an allowance at both
    ends, makes that up: `strips = ceil(flat / (strip - 2 · allowance))`. A ruffle along an edge with ends has one join fewer
    and narrow hems instead. Strips across the cloth gather softly, along the selvedge crisply; on the bias no hem frays.

    A ratio below 1.2 or above 4 is doubted (common practice, no source).

    Parameters
    ----------
    edge : array_like
        edge that it is sewn to (mm, 1 to 100000)
    ratio : array_like
        strip over edge (1 to 10)
    depth : array_like
        finished depth, seam to hem edge (mm, 1 to 10000)
    strip : array_like
        length of one strip: the cloth's width, or a scrap's length (mm, 10 to 100000)
    allowance : array_like
        seam allowance at the gathered edge and each join (mm, 0 to 1000)
    hem : array_like
        hem allowance, turn included (mm, 0 to 1000)

    Returns
    -------
    flat : float
        Length of the joined strip before gathering (mm)
    cut_width : float
        Width to cut each strip (mm)
    strips : int
        Number of strips
    cloth_length : float
        Cloth that the strips take, lying side by side (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `allowance` when it takes the whole strip, or so
        much that there would be more than 100000 strips.

    Notes
    -----
    Source: Arithmetic. Ratio: C. C. Ingalls, *Text-Book on Domestic Art*, 1911 (1 1/2); 1.5 to 3 by weight and fullness,
    stitchcoach.blogspot.com, 2017. The doubt is that of `gathers`.

    Example: ruffle(edge=1200, ratio=1.5, depth=80, strip=620, allowance=10, hem=15) gives flat 1800, cut_width 105, strips 3, cloth_length 315, doubts 0
    """
    if type(edge) is float and type(ratio) is float and type(depth) is float and type(strip) is float and type(allowance) is float and type(hem) is float:
        return _new(Ruffle, _core.one_ruffle(edge, ratio, depth, strip, allowance, hem))
    return _call.scalars("ruffle", Ruffle, ("edge", "ratio", "depth", "strip", "allowance", "hem",), (edge, ratio, depth, strip, allowance, hem,))


def screen_level(light):
    """Screen level of an amount of light: `linear_light` turned round.

    Parameters
    ----------
    light : array_like
        share of the most light (0 to 1)

    Returns
    -------
    float
        Level, 0 to 255, not rounded

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: IEC 61966-2-1 (sRGB).

    Example: screen_level(light=0.18) gives 117.64581302261271
    """
    if type(light) is float:
        return _core.one_screen_level(light)
    return _call.scalars("screen_level", None, ("light",), (light,))


def seam_pleat(depth, allowance):
    """Cloth added at the two edges of a seam that is to hold an inverted pleat.

    The first edge gets one depth and its allowance, the next one three depths and its allowance: the seam then lies hidden
    in an inner fold, not in the middle of the underlay. At a gored seam both are added along the slanted edge.

    Parameters
    ----------
    depth : array_like
        depth of each of the pleat's two folds (mm, 0.1 to 10000)
    allowance : array_like
        seam allowance of each edge (mm, 0 to 1000)

    Returns
    -------
    first_edge : float
        Added to the edge whose seam lies in the nearer inner fold (mm)
    next_edge : float
        Added to the edge that makes the rest of the pleat (mm)
    intake : float
        Both together, less the seam: what the pleat takes up (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: L. I. Baldt, *Clothing for Women*, 1916, Outer Garments pt 4 (inverted pleat at a gored seam: 1 pleat width and a seam on
    the first edge, 3 and a seam on the next). A pleat that deepens to the hem is asked for twice, at the waist and at the
    hem: the same author adds 2 to 3 in at the waist for a back pleat and twice that at the hem.

    Example: seam_pleat(depth=50, allowance=10) gives first_edge 60, next_edge 160, intake 200
    """
    if type(depth) is float and type(allowance) is float:
        return _new(SeamPleat, _core.one_seam_pleat(depth, allowance))
    return _call.scalars("seam_pleat", SeamPleat, ("depth", "allowance",), (depth, allowance,))


def sectioned_band(lengths, depth, top, ends):
    """Upper edges of a band made of straight sections that slant at their joins.

    What the upper edge is shorter by is shared by the slanted ends: `slant = (sum of lengths - top) / slanted ends`, at
    the angle `atan(slant / depth)` from the square. At each join the lower edge peaks, and the upper edge notches, by
    twice that angle, so the edges are trued to a curve or the band is cut curved (`curved_band`). A side seam runs on
    straight into the band only if the end's angle equals the skirt's side seam's angle from the square at the waist. An
    end that overlaps must be square.

    Parameters
    ----------
    lengths : sequence of float
        finished lower edge of each section, in order (mm, 1 to 100000, 1 to 100 items)
    depth : float
        finished depth, square to the lower edge (mm, 1 to 10000)
    top : float
        finished upper edge of all sections together (mm, 1 to 10000000)
    ends : SquareEnds
        which free ends are square

    Returns
    -------
    tops : array
        finished upper edge of each section (mm)
    slant : float
        What each slanted end takes from the upper edge; negative where the band flares (mm)
    end_angle_deg : float
        Angle of a slanted end from the square (deg)
    join_kink_deg : float
        Kink at each join: a peak of the lower edge and a notch of the upper; 0 without a join (deg)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `top` when one section has
        both ends square and a different top; naming `lengths` when a section is shorter than its slants.

    Notes
    -----
    Source: Plane geometry. `tests/vectors/sectioned_band.csv` has hand-worked rows.

    Example: sectioned_band(lengths=[140, 330, 230], depth=50, top=676, ends='both') gives tops 134 318 224, slant 6, end_angle_deg 6.84, join_kink_deg 13.69, doubts 0
    """
    lengths = _numbers.list_of(lengths, "sectioned_band", "lengths")
    depth = _numbers.number(depth, "sectioned_band", "depth")
    top = _numbers.number(top, "sectioned_band", "top")
    ends = _call.choice(SquareEnds, ends, "sectioned_band", "ends")
    return _new(SectionedBand, _core.one_sectioned_band(lengths, depth, top, ends))


def shaped_band(lower, upper, depth):
    """Part of a ring for a shaped band, or for any cone or frustum.

    `outer_radius = lower · depth / (lower - upper)`, `inner_radius = outer_radius - depth`, angle in radians
    `(lower - upper) / depth`. For a straight band there is no such ring: see `straight_band`. A band that flares
    upwards is the same ring turned over: give its longer edge as `lower`.

    Parameters
    ----------
    lower : array_like
        finished length of the lower edge (mm, 1 to 100000)
    upper : array_like
        finished length of the upper edge (mm, 0 to 100000, < lower)
    depth : array_like
        from edge to edge, measured along the cloth (mm, 1 to 10000)

    Returns
    -------
    inner_radius : float
        Radius of the upper, shorter edge (mm)
    outer_radius : float
        Radius of the lower, longer edge (mm)
    angle_deg : float
        Angle of the sector (deg)
    sagitta : float
        Height of the lower edge's arc above the straight line between its ends (mm)
    area_mm2 : float
        Area of the band (mm2)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `upper` when it is not below `lower`, or so far
        below that the sector would be more than a full ring.

    Notes
    -----
    Source: Unrolled frustum: E. M. Longfield, *Sheet Metal Drafting*, 1921 (slant height, area by the mean of the two
    circumferences); `tests/vectors/shaped_band.csv` has published and hand-worked rows.

    Example: shaped_band(lower=700, upper=676, depth=50) gives inner_radius 1408.33, outer_radius 1458.33, angle_deg 27.50, sagitta 41.80, area_mm2 34400
    """
    if type(lower) is float and type(upper) is float and type(depth) is float:
        return _new(ShapedBand, _core.one_shaped_band(lower, upper, depth))
    return _call.scalars("shaped_band", ShapedBand, ("lower", "upper", "depth",), (lower, upper, depth,))


def share(girth, ease=0.0, parts=4):
    """One panel's share of a girth.

    `share = (girth + ease) / parts`, inside the seams. Ease is negative in cloth that stretches.

    For doubts on the girth see `girth_doubts`.

    Parameters
    ----------
    girth : array_like
        girth of the body (mm, 1 to 100000)
    ease : array_like, default 0
        what the garment has more (mm, -10000 to 10000)
    parts : array_like of int, default 4
        number of equal panels (1 to 64)

    Returns
    -------
    float
        The width of each panel inside the seams (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `ease`: it takes the whole girth away.

    Notes
    -----
    Source: Arithmetic; `tests/vectors/share.csv` has published rows.

    Example: share(girth=1000, ease=60, parts=4) gives 265
    """
    if type(girth) is float and type(ease) is float and type(parts) is int:
        return _core.one_share(girth, ease, parts)
    return _call.scalars("share", None, ("girth", "ease", "parts",), (girth, ease, parts,))


def shirring(finished, depth, pitch=10.0, drawn_pct=55.0):
    """Cloth and rows for shirring with elastic thread.

    `flat = finished · 100 / drawn_pct`, and `rows = floor(depth / pitch) + 1`, the first and last at the edges of the depth.
    How far it draws up depends on cloth, tension and number of rows, and steam draws it further: shirr a square of known
    width and measure.

    Parameters
    ----------
    finished : array_like
        width when drawn up, not stretched (mm, 1 to 100000)
    depth : array_like
        from the first row to the last (mm, 0 to 10000)
    pitch : array_like, default 10
        from row to row (mm, 1 to 1000)
    drawn_pct : array_like, default 55
        what the cloth draws up to (%, 10 to 100)

    Returns
    -------
    flat : float
        Width before shirring, without allowances (mm)
    ratio : float
        Flat over finished
    rows : int
        Number of rows
    stitching : float
        All rows together, as sewn on the flat cloth (mm)
    cautions : int
        Always `ELASTIC_BATH` (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: To 50 or 60 % of its width: common practice, no source; the default is the middle. `tests/vectors/shirring.csv`.

    Example: shirring(finished=330, depth=120, pitch=10, drawn_pct=55) gives flat 600, ratio 1.8182, rows 13, stitching 7800, cautions 8
    """
    if type(finished) is float and type(depth) is float and type(pitch) is float and type(drawn_pct) is float:
        return _new(Shirring, _core.one_shirring(finished, depth, pitch, drawn_pct))
    return _call.scalars("shirring", Shirring, ("finished", "depth", "pitch", "drawn_pct",), (finished, depth, pitch, drawn_pct,))


def shrink_pair(shell, lining, shell_change_pct, lining_change_pct):
    """What washing does to a shell and its lining, and how to cut both for it.

    Both lengths run from the same upper seam. Sewn as given, each becomes `length · (1 + change / 100)`; to have them as
    given after washing, each is cut `length / (1 + change / 100)`. Ask once for the length and once for the width.

    A change of less than 0.2 %, which no tape shows, is doubted: 0.05 may be a share.

    Parameters
    ----------
    shell : array_like
        finished shell (mm, 0 to 1000000)
    lining : array_like
        finished lining (mm, 0 to 1000000)
    shell_change_pct : array_like
        dimensional change of the shell's cloth (%, -90 to 100)
    lining_change_pct : array_like
        dimensional change of the lining's cloth (%, -90 to 100)

    Returns
    -------
    shell_after : float
        Shell after washing, if it is sewn as given (mm)
    lining_after : float
        Lining after washing, if it is sewn as given (mm)
    below : float
        How far the lining then hangs below the shell; negative above (mm)
    shell_cut : float
        Shell to cut so that washing leaves the length given (mm)
    lining_cut : float
        Lining to cut so that washing leaves the length given (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: ISO 5077:2007 (definition). `tests/vectors/shrink_pair.csv` has hand-worked rows.

    Example: shrink_pair(shell=600, lining=580, shell_change_pct=-5, lining_change_pct=-1) gives shell_after 570, lining_after 574.20, below 4.20, shell_cut 631.58, lining_cut 585.86, doubts 16777216
    """
    if type(shell) is float and type(lining) is float and type(shell_change_pct) is float and type(lining_change_pct) is float:
        return _new(ShrinkPair, _core.one_shrink_pair(shell, lining, shell_change_pct, lining_change_pct))
    return _call.scalars("shrink_pair", ShrinkPair, ("shell", "lining", "shell_change_pct", "lining_change_pct",), (shell, lining, shell_change_pct, lining_change_pct,))


def size_step(smaller, larger, steps=1, edges=4):
    """Step from one size to the next, all round and at each edge of the pattern.

    `step = (larger - smaller) / steps`, `each_edge = step / edges`. Even steps only: in published series the step itself grows
    in the larger sizes, and lengths do not grow as girths do.

    A girth below 110 mm, less than a child's wrist (from memory), is doubted.

    Parameters
    ----------
    smaller : array_like
        girth of the smaller size (mm, 1 to 100000)
    larger : array_like
        girth of the larger size (mm, 1 to 100000, >= smaller)
    steps : array_like of int, default 1
        number of steps from one to the other (1 to 100)
    edges : array_like of int, default 4
        edges that share a step, two to a seam (1 to 64)

    Returns
    -------
    step : float
        From one size to the next, all round (mm)
    each_edge : float
        The same at each edge of the pattern (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `larger` when it is the smaller.

    Notes
    -----
    Source: Arithmetic. EN 13402-3's series steps by 40 mm, then 60 mm, in bust (from memory). `tests/vectors/size_step.csv`.

    Example: size_step(smaller=760, larger=1040, steps=7, edges=4) gives step 40, each_edge 10, doubts 0
    """
    if type(smaller) is float and type(larger) is float and type(steps) is int and type(edges) is int:
        return _new(SizeStep, _core.one_size_step(smaller, larger, steps, edges))
    return _call.scalars("size_step", SizeStep, ("smaller", "larger", "steps", "edges",), (smaller, larger, steps, edges,))


def skew(shift, width):
    """Skew of cloth: how far a weft thread has run off square, in percent of the width.

    `skew = 100 · shift / width`. Pull or follow one weft thread across; measure along the selvedge how far its far end
    lies from square. Positive and negative are the two ways it may lean.

    Parameters
    ----------
    shift : array_like
        along the selvedge, from square to the thread (mm, -100000 to 100000)
    width : array_like
        width of the cloth, square across (mm, 1 to 100000)

    Returns
    -------
    float
        Skew (%)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: ASTM D3882 (formula from memory).

    Example: skew(shift=42, width=1400) gives 3
    """
    if type(shift) is float and type(width) is float:
        return _core.one_skew(shift, width)
    return _call.scalars("skew", None, ("shift", "width",), (shift, width,))


def skew_diagonals(first, second):
    """Skew of a square marked on the cloth, from its two diagonals after washing, in percent.

    `skew = 200 · (first - second) / (first + second)`. For a small skew it is the shift of a side in percent of the side,
    as `skew` gives; of a large one it falls short by a quarter of the square: 9.975 for a side shifted by 10 %.

    Parameters
    ----------
    first : array_like
        one diagonal of the square (mm, 1 to 100000)
    second : array_like
        the other (mm, 1 to 100000)

    Returns
    -------
    float
        Skew (%)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: AATCC 179, the way by diagonals (formula from memory).

    Example: skew_diagonals(first=360, second=340) gives 5.714
    """
    if type(first) is float and type(second) is float:
        return _core.one_skew_diagonals(first, second)
    return _call.scalars("skew_diagonals", None, ("first", "second",), (first, second,))


def snip_spacing(radius, allowance, opening=3.0):
    """Distance between the snips of a curved seam allowance.

    Turned under, an allowance along an inward curve such as a neckline is too short and each snip opens; along an
    outward one it is too long and each notch cut out closes. Either way a stretch of seam `s` opens or closes by
    `2 · allowance · s / radius` at the raw edge, so `spacing = opening · radius / (2 · allowance)`. A turned edge is
    nearly straight between snips and leaves the curve there by `spacing² / (8 · radius)`. Staystitch first, snip to a
    thread's breadth from it and no further. The blades are sharp: cut away from the hand that holds.

    Parameters
    ----------
    radius : array_like
        radius of the seam line (mm, 1 to 1000000)
    allowance : array_like
        seam allowance, after trimming (mm, 0.1 to 1000)
    opening : array_like, default 3
        how far a snip may open, or how wide a notch is (mm, 0.1 to 100)

    Returns
    -------
    spacing : float
        From snip to snip along the seam line (mm)
    flat : float
        How far a straight fold between two snips leaves the curve (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `opening` when the spacing would be more than a
        quarter ring, where it would no longer be small.

    Notes
    -----
    Source: Arcs about one centre; the opening of 3 mm is common practice, no source. `tests/vectors/snip_spacing.csv` has
    hand-worked rows.

    Example: snip_spacing(radius=80, allowance=10, opening=3) gives spacing 12, flat 0.225
    """
    if type(radius) is float and type(allowance) is float and type(opening) is float:
        return _new(SnipSpacing, _core.one_snip_spacing(radius, allowance, opening))
    return _call.scalars("snip_spacing", SnipSpacing, ("radius", "allowance", "opening",), (radius, allowance, opening,))


def spacing_by_pitch(first, last, pitch=90.0):
    """Number of buttons whose even spacing comes nearest to a wanted pitch.

    Of the two whole numbers of spaces about `(last - first) / pitch` the one is taken whose pitch differs less from that
    wanted; on a tie the closer spacing. Two buttons at least.

    Parameters
    ----------
    first : array_like
        place of the first, from the edge's start (mm, 0 to 100000)
    last : array_like
        place of the last (mm, 0 to 100000, > first)
    pitch : array_like, default 90
        pitch wanted (mm, 1 to 100000)

    Returns
    -------
    count : int
        Number of buttons, the first and last included
    pitch : float
        From middle to middle of neighbours (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `last` when it is not beyond `first`.

    Notes
    -----
    Source: Arithmetic. A pitch of about 3 1/2 in is usual on a blouse (sunjournal.com; sewing.about.com); the default is that, in
    round millimetres. One button belongs at the bust line: see `spacing_through`.

    Example: spacing_by_pitch(first=20, last=500, pitch=90) gives count 6, pitch 90
    """
    if type(first) is float and type(last) is float and type(pitch) is float:
        return _new(SpacingByPitch, _core.one_spacing_by_pitch(first, last, pitch))
    return _call.scalars("spacing_by_pitch", SpacingByPitch, ("first", "last", "pitch",), (first, last, pitch,))


def spacing_through(first, last, through, count):
    """Places of buttons from a first to a last, one of them at a place that must be met.

    The bust line, or a waist seam, fixes one button. The places before it are even among themselves, and so are those
    after it; how many go on each side is chosen so that the two pitches differ least (on a tie, fewer before). Where they
    differ too much to please, move the first or the last, or change the number.

    Parameters
    ----------
    first : float
        place of the first, from the edge's start (mm, 0 to 100000)
    last : float
        place of the last (mm, 0 to 100000, > first)
    through : float
        place that one of them must have (mm, 0 to 100000, > first, < last)
    count : int
        how many, the first and last included (3 to 1000)

    Returns
    -------
    places : array
        the places, in order (mm)
    pitch_before : float
        From middle to middle before the fixed place (mm)
    pitch_after : float
        From middle to middle after the fixed place (mm)
    fixed : int
        Which of the places is the fixed one, from 0
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange` or `Room`, naming the argument. `NoSolution` naming `last` or `through` when the three are
        not in order.

    Notes
    -----
    Source: Arithmetic; the doubt at 3.2 mm (1/8 in) is the placement tolerance of a custom clothiers' judging standard.
    `tests/vectors/spacing_through.csv` has hand-worked rows.

    Example: spacing_through(first=20, last=500, through=200, count=7) gives places 20 110 200 275 350 425 500, pitch_before 90, pitch_after 75, fixed 2, doubts 2097152
    """
    first = _numbers.number(first, "spacing_through", "first")
    last = _numbers.number(last, "spacing_through", "last")
    through = _numbers.number(through, "spacing_through", "through")
    count = _numbers.number(count, "spacing_through", "count")
    return _new(SpacingThrough, _core.one_spacing_through(first, last, through, count))


def srgb_from_lab(l, a, b):
    """Screen levels of a colour given in CIELAB under daylight D65.

    A colour that no screen shows is brought to the nearest end of each level, and counted in `outside`.

    Parameters
    ----------
    l : array_like
        lightness L* (0 to 100)
    a : array_like
        a*: green below 0, red above (-200 to 200)
    b : array_like
        b*: blue below 0, yellow above (-200 to 200)

    Returns
    -------
    red : float
        Red, 0 to 255 where a screen can show it
    green : float
        Green, 0 to 255 where a screen can show it
    blue : float
        Blue, 0 to 255 where a screen can show it
    outside : int
        How many of the three a screen cannot show

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: CIE 15 (CIELAB) and IEC 61966-2-1 (sRGB).

    Example: srgb_from_lab(l=68.2864, a=9.3304, b=12.7525) gives red 192, green 160, blue 144, outside 0
    """
    if type(l) is float and type(a) is float and type(b) is float:
        return _new(Srgb, _core.one_srgb_from_lab(l, a, b))
    return _call.scalars("srgb_from_lab", Srgb, ("l", "a", "b",), (l, a, b,))


def srgb_from_xyz(x, y, z):
    """Screen levels of a colour given by its tristimulus values.

    A colour that no screen shows is brought to the nearest end of each level, and counted in `outside`: its hue is then
    not true.

    Parameters
    ----------
    x : array_like
        X (0 to 2)
    y : array_like
        Y, the luminance: white has 1 (0 to 2)
    z : array_like
        Z (0 to 2)

    Returns
    -------
    red : float
        Red, 0 to 255 where a screen can show it
    green : float
        Green, 0 to 255 where a screen can show it
    blue : float
        Blue, 0 to 255 where a screen can show it
    outside : int
        How many of the three a screen cannot show

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: IEC 61966-2-1 (sRGB); the matrix is the inverse of the one in `xyz_from_srgb`, to the last digit, so that a colour
    comes back.

    Example: srgb_from_xyz(x=0.9505, y=1, z=1.089) gives red 255, green 255, blue 255, outside 0
    """
    if type(x) is float and type(y) is float and type(z) is float:
        return _new(Srgb, _core.one_srgb_from_xyz(x, y, z))
    return _call.scalars("srgb_from_xyz", Srgb, ("x", "y", "z",), (x, y, z,))


def stitch_length(stitches_per_inch):
    """Length of one stitch from the number of stitches in an inch.

    `length = 25.4 / stitches`. Pages that pair 2.5 to 3 mm with 10 to 12 stitches are not consistent: 3 mm is 8.5.

    Parameters
    ----------
    stitches_per_inch : array_like
        stitches in one inch (0.5 to 200)

    Returns
    -------
    float
        Length of one stitch (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: 1 in = 25.4 mm, exact by the international yard and pound agreement of 1959.

    Example: stitch_length(stitches_per_inch=10) gives 2.54
    """
    if type(stitches_per_inch) is float:
        return _core.one_stitch_length(stitches_per_inch)
    return _call.scalars("stitch_length", None, ("stitches_per_inch",), (stitches_per_inch,))


def stock_volume(mass_g, pct, stock_pct):
    """Volume of a stock solution for a percentage on weight of fibre.

    `stock = mass · pct / stock_pct`, the stock in grams in 100 ml. For dye, mordant or assistant; not for bleach. Usual is a
    stock of 0.05 to 50; outside it, and as for `owf`, there are doubts.

    Parameters
    ----------
    mass_g : array_like
        dry mass of the goods (g, 0.01 to 1000000)
    pct : array_like
        percentage on weight of fibre (%, 0 to 1000)
    stock_pct : array_like
        grams in 100 ml of the stock (%, 0.001 to 100)

    Returns
    -------
    stock_ml : float
        Stock solution to measure out (ml)
    amount_g : float
        What that holds (g)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: R. Sohel, textile calculation pages, 2014-12 to 2015-04. Where doubts begin: common practice, no source.

    Example: stock_volume(mass_g=5, pct=2, stock_pct=0.5) gives stock_ml 20, amount_g 0.1, doubts 0, cautions 3
    """
    if type(mass_g) is float and type(pct) is float and type(stock_pct) is float:
        return _new(StockVolume, _core.one_stock_volume(mass_g, pct, stock_pct))
    return _call.scalars("stock_volume", StockVolume, ("mass_g", "pct", "stock_pct",), (mass_g, pct, stock_pct,))


def straight_band(waist, overlap, depth, allowance, turn=0.0, make="folded"):
    """Strip to cut for a straight band.

    Folded: `cut_width = 2 · depth + 2 · allowance + turn`, one strip. Faced: `cut_width = depth + 2 · allowance + turn`,
    two strips. `cut_length = waist + overlap + 2 · allowance`. The turn is the cloth that the upper edge takes by its
    own thickness; fold or sew a sample to learn it.

    The waist is doubted as `girth_doubts` does.

    Parameters
    ----------
    waist : array_like
        finished length round the waist, ease included (mm, 1 to 100000)
    overlap : array_like
        what runs on past the opening, at both ends together (mm, 0 to 10000)
    depth : array_like
        finished depth (mm, 1 to 10000)
    allowance : array_like
        seam allowance at each edge and each end (mm, 0 to 1000)
    turn : array_like, default 0
        cloth taken by the thickness of the upper edge (mm, 0 to 100)
    make : BandMake, default "folded"
        how the band gets its two layers

    Returns
    -------
    cut_length : float
        Length to cut, allowances included (mm)
    cut_width : float
        Width to cut, allowances included (mm)
    strips : int
        How many such strips
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic; the turn is common practice, no source. `tests/vectors/straight_band.csv` has hand-worked rows.

    Example: straight_band(waist=710, overlap=30, depth=25, allowance=10, turn=2, make='folded') gives cut_length 760, cut_width 72, strips 1, doubts 0
    """
    make = _call.choice(BandMake, make, "straight_band", "make")
    if type(waist) is float and type(overlap) is float and type(depth) is float and type(allowance) is float and type(turn) is float:
        return _new(StraightBand, _core.one_straight_band(waist, overlap, depth, allowance, turn, make))
    return _call.scalars("straight_band", StraightBand, ("waist", "overlap", "depth", "allowance", "turn", "make",), (waist, overlap, depth, allowance, turn, make,))


def straight_band_depth(cut_width, allowance, turn=0.0, make="folded"):
    """Finished depth of a straight band from a strip there is.

    Folded: `depth = (cut_width - 2 · allowance - turn) / 2`. Faced: `depth = cut_width - 2 · allowance - turn`. A strip
    drawn without allowances still loses them to its seams, which is the usual slip.

    Parameters
    ----------
    cut_width : array_like
        width of the strip from raw edge to raw edge (mm, 1 to 100000)
    allowance : array_like
        seam allowance at each long edge (mm, 0 to 1000)
    turn : array_like, default 0
        cloth taken by the thickness of the upper edge (mm, 0 to 100)
    make : BandMake, default "folded"
        how the band gets its two layers

    Returns
    -------
    float
        Finished depth of the band (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `allowance` when the allowances and the turn
        leave nothing of the strip.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/straight_band_depth.csv` has hand-worked rows.

    Example: straight_band_depth(cut_width=50, allowance=10, turn=0, make='folded') gives 15
    """
    make = _call.choice(BandMake, make, "straight_band_depth", "make")
    if type(cut_width) is float and type(allowance) is float and type(turn) is float:
        return _core.one_straight_band_depth(cut_width, allowance, turn, make)
    return _call.scalars("straight_band_depth", None, ("cut_width", "allowance", "turn", "make",), (cut_width, allowance, turn, make,))


def stretch_pct(relaxed, pulled):
    """Stretch of cloth from a marked length and the same length pulled out, in percent.

    `stretch = 100 · (pulled - relaxed) / relaxed`. Fold the cloth across the way it is to stretch, mark 100 mm away from
    the edge, and pull until it resists, not until it can go no further. Let go and measure again: what stays longer will
    bag at knee and elbow.

    Parameters
    ----------
    relaxed : array_like
        distance of the marks at rest (mm, 1 to 100000)
    pulled : array_like
        distance of the marks pulled (mm, 1 to 1000000, >= relaxed)

    Returns
    -------
    float
        Stretch (%)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `pulled` when it is less than `relaxed`.

    Notes
    -----
    Source: Definition; the way to test is common practice, no source.

    Example: stretch_pct(relaxed=100, pulled=135) gives 35
    """
    if type(relaxed) is float and type(pulled) is float:
        return _core.one_stretch_pct(relaxed, pulled)
    return _call.scalars("stretch_pct", None, ("relaxed", "pulled",), (relaxed, pulled,))


def take_in(garment, body, ease, edges=4, limit=20.0):
    """What to take in at each edge of a garment that is too wide, and what is left over.

    `excess = garment - (body + ease)`, shared evenly by the edges but no more than `limit` each, beyond which side seams leave
    the body's side and armholes lose their shape. A seam has two edges: both sides are four. A fold pinned out of the cloth
    takes twice its depth: pinned 8, taken 16. Taken in at the armhole, the sleeve must be taken in too; at the hem, see that
    the step is still wide enough.

    A body below 110 mm, less than a child's wrist (from memory), is doubted.

    Parameters
    ----------
    garment : array_like
        finished garment at this level, all round (mm, 1 to 100000)
    body : array_like
        body at this level, all round (mm, 1 to 100000)
    ease : array_like
        what the garment is to have more than the body (mm, -10000 to 10000)
    edges : array_like of int, default 4
        edges that share it, two to a seam (1 to 64)
    limit : array_like, default 20
        the most that each edge may take (mm, 0 to 10000)

    Returns
    -------
    excess : float
        What the garment is too wide by (mm)
    each : float
        Taken at each edge, beyond its old seam line (mm)
    taken : float
        Taken at all edges together (mm)
    leftover : float
        Left for darts or the centre back (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `garment` when it is narrower than body and ease: it
        must be let out (`let_out`).

    Notes
    -----
    Source: Arithmetic; the limit is common practice, no source. `tests/vectors/take_in.csv` has hand-worked rows.

    Example: take_in(garment=1120, body=960, ease=60, edges=4, limit=20) gives excess 100, each 20, taken 80, leftover 20, doubts 0
    """
    if type(garment) is float and type(body) is float and type(ease) is float and type(limit) is float and type(edges) is int:
        return _new(TakeIn, _core.one_take_in(garment, body, ease, edges, limit))
    return _call.scalars("take_in", TakeIn, ("garment", "body", "ease", "edges", "limit",), (garment, body, ease, edges, limit,))


def tex_from_cotton_count(cotton_count, plies=1):
    """Linear density of a yarn or thread from its cotton count (Ne).

    The cotton count is how many hanks of 840 yards weigh a pound: `tex = 590.54 · plies / count`. A larger number is a
    thinner yarn. A thread marked 40/2 is two plies of count 40. A convention that counts the moisture in has 583.1 in
    place of 590.54, which is 1.3 % less: do not mix the two.

    Parameters
    ----------
    cotton_count : array_like
        cotton count of one ply (0.1 to 1000)
    plies : array_like of int, default 1
        equal plies twisted together (1 to 24)

    Returns
    -------
    float
        Linear density of the plied yarn, take-up in twisting left out (tex)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Definition: 453.59237 g in 840 yards of 0.9144 m. NIMI, *Shawl Weaving Artisan*, p. 72 (20 tex is 29.525).

    Example: tex_from_cotton_count(cotton_count=40, plies=2) gives 29.527
    """
    if type(cotton_count) is float and type(plies) is int:
        return _core.one_tex_from_cotton_count(cotton_count, plies)
    return _call.scalars("tex_from_cotton_count", None, ("cotton_count", "plies",), (cotton_count, plies,))


def tex_from_denier(denier):
    """Linear density of a yarn or thread from its denier.

    Tex is grams a kilometre, denier grams in nine kilometres: `tex = denier / 9`. A larger number is a thicker yarn.

    Parameters
    ----------
    denier : array_like
        grams in 9 kilometres (0.01 to 1000000)

    Returns
    -------
    float
        Linear density (tex)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Definitions of the units. Groen Kennisnet wiki, HNPE 7.1.6, yarn numbering (conversion table).

    Example: tex_from_denier(denier=180) gives 20
    """
    if type(denier) is float:
        return _core.one_tex_from_denier(denier)
    return _call.scalars("tex_from_denier", None, ("denier",), (denier,))


def tex_from_metric_count(metric_count, plies=1):
    """Linear density of a yarn or thread from its metric count (Nm).

    The metric count is how many metres weigh a gram: `tex = 1000 · plies / count`. A larger number is a thinner yarn.

    Parameters
    ----------
    metric_count : array_like
        metric count of one ply (0.1 to 2000)
    plies : array_like of int, default 1
        equal plies twisted together (1 to 24)

    Returns
    -------
    float
        Linear density of the plied yarn, take-up in twisting left out (tex)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Definitions of the units. Groen Kennisnet wiki, HNPE 7.1.6, yarn numbering (conversion table).

    Example: tex_from_metric_count(metric_count=50, plies=1) gives 20
    """
    if type(metric_count) is float and type(plies) is int:
        return _core.one_tex_from_metric_count(metric_count, plies)
    return _call.scalars("tex_from_metric_count", None, ("metric_count", "plies",), (metric_count, plies,))


def thread_for_seam(seam, ratio=2.5, waste_pct=15.0):
    """Thread for a seam, waste included.

    `thread = seam · ratio · (1 + waste_pct / 100)`. The ratio is measured on an unpicked length, or taken from
    `thread_ratio` or a maker's table; for one thread of several, give that thread's own. Wind on more than this:
    tension, thickness and the stitch's length all change it.

    Parameters
    ----------
    seam : array_like
        length of all seams of this kind (mm, 0 to 100000000)
    ratio : array_like, default 2.5
        thread over seam (0.1 to 100)
    waste_pct : array_like, default 15
        for ends, tests and what is left on the bobbin (%, 0 to 500)

    Returns
    -------
    float
        Length of thread (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic. Ratio 2.5 for a lockstitch: Coats, *Standard Stitch Type Classification*. Waste of 10 to 15 % by Coats, 15
    to 20 % by American & Efird; in home sewing with many short seams it is more (common practice, no source).

    Example: thread_for_seam(seam=12000, ratio=2.5, waste_pct=15) gives 34500
    """
    if type(seam) is float and type(ratio) is float and type(waste_pct) is float:
        return _core.one_thread_for_seam(seam, ratio, waste_pct)
    return _call.scalars("thread_for_seam", None, ("seam", "ratio", "waste_pct",), (seam, ratio, waste_pct,))


def thread_ratio(stitch_length, thickness, stitch="lock"):
    """Thread that a seam takes for its length, from the path of the stitch.

    `ratio = c + 2 · thickness / stitch_length`, with `c` 3 for type 101, 2 for 301, 4 for 401: along the seam on both
    faces, and through it twice a stitch. The path is drawn tight: makers' rounded ratios are higher, 2.5 for type 301 where
    thin cloth gives 2.2 here, and 5 for type 101 where it gives 3.1. Overedge stitches have published formulas that disagree, and are left
    out: for them, unpick a length of seam and measure, or take a maker's ratio.

    Parameters
    ----------
    stitch_length : array_like
        length of one stitch (mm, 0.1 to 100)
    thickness : array_like
        all layers of the seam, pressed (mm, 0 to 100)
    stitch : StitchType, default "lock"
        type of the stitch

    Returns
    -------
    float
        Thread over seam, all threads together

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: A. K. Das, *textilecalculation* blog, 2015 (101, 301); Union Special's chart in a bulletin of American & Efird, 2008
    (401). Ratios: Coats, *Standard Stitch Type Classification* (101 5, 103 4.5, 301 2.5).

    Example: thread_ratio(stitch_length=2.5, thickness=1, stitch='lock') gives 2.8
    """
    stitch = _call.choice(StitchType, stitch, "thread_ratio", "stitch")
    if type(stitch_length) is float and type(thickness) is float:
        return _core.one_thread_ratio(stitch_length, thickness, stitch)
    return _call.scalars("thread_ratio", None, ("stitch_length", "thickness", "stitch",), (stitch_length, thickness, stitch,))


def tiers(top, ratios):
    """Way round each tier of a tiered skirt.

    Each tier is the one above times its ratio, the first the top edge times the first ratio, so that the fullness
    multiplies: three tiers of 1.5 make a hem of 3.375 times the waist. How the length is shared over the tiers is
    taste. Allowances and joins are extra (`breadths`).

    Parameters
    ----------
    top : float
        edge that the first tier is gathered to (mm, 1 to 100000)
    ratios : sequence of float
        tier over the one above, from the top down (1 to 10, 1 to 12 items)

    Returns
    -------
    flats : array
        way round each tier before gathering (mm)
    hem : float
        Way round the last tier, which is the hem (mm)
    ratio : float
        Hem over the top edge
    strip : float
        All tiers together, as one strip (mm)
    doubts : int
        `GATHERS_SCANT` when any tier is gathered by less than 1.2, `GATHERS_LARGE` by more than 4 (bits)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `ratios` when a tier would be
        more than 10 km round.

    Notes
    -----
    Source: Arithmetic; a flounce is 1 1/2 times its line by C. C. Ingalls, *Text-Book on Domestic Art*, 1911.
    `tests/vectors/tiers.csv` has hand-worked rows.

    Example: tiers(top=800, ratios=[1.5, 1.5, 2]) gives flats 1200 1800 3600, hem 3600, ratio 4.5, strip 6600, doubts 0
    """
    top = _numbers.number(top, "tiers", "top")
    ratios = _numbers.list_of(ratios, "tiers", "ratios")
    return _new(Tiers, _core.one_tiers(top, ratios))


def tolerance_stack(seams, error_each=1.0):
    """How far a girth made of equal seams may be off.

    A seam sewn `error_each` beside its line takes that much from both of its edges: `worst = 2 · seams · error_each`,
    `likely = 2 · error_each · √seams`. Where the ease at the waist is less than the worst case, try on before the band is
    cut.

    Parameters
    ----------
    seams : array_like of int
        number of seams, darts counted as one each (0 to 1000)
    error_each : array_like, default 1
        how far beside its line a seam may be sewn (mm, 0 to 100)

    Returns
    -------
    worst : float
        When every error falls the same way (mm)
    likely : float
        When they fall by chance: the root of the sum of their squares (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Worst case by arithmetic; independent errors add as the root of the sum of their squares: JCGM 100:2008, *Guide to the
    expression of uncertainty in measurement*, 5.1.2.

    Example: tolerance_stack(seams=6, error_each=1) gives worst 12, likely 4.899
    """
    if type(error_each) is float and type(seams) is int:
        return _new(ToleranceStack, _core.one_tolerance_stack(seams, error_each))
    return _call.scalars("tolerance_stack", ToleranceStack, ("seams", "error_each",), (seams, error_each,))


def tolerance_stack_list(errors, edges):
    """How far a length made of unlike terms may be off, and which of them adds most.

    Each term's error counts once for each of its edges: 2 for a seam, 1 for a fold or a raw edge, 0 for a term that is
    sure.

    Parameters
    ----------
    errors : sequence of float
        how far each term may be off (mm, 0 to 1000, 1 to 1000 items)
    edges : sequence of int
        how many times each error counts (0 to 100, as many as errors)

    Returns
    -------
    worst : float
        When every error falls the same way (mm)
    likely : float
        When they fall by chance: the root of the sum of their squares (mm)
    largest : int
        Index of the term that adds most, of equals the first
    largest_part : float
        What that term adds to the worst case (mm)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange` or `Count`, naming the argument.

    Notes
    -----
    Source: As `tolerance_stack`.

    Example: tolerance_stack_list(errors=[1, 1, 1, 1, 2], edges=[2, 2, 2, 2, 1]) gives worst 10, likely 4.472, largest 0, largest_part 2
    """
    errors = _numbers.list_of(errors, "tolerance_stack_list", "errors")
    edges = _numbers.wholes_of(edges, "tolerance_stack_list", "edges")
    return _new(ToleranceStackList, _core.one_tolerance_stack_list(errors, edges))


def trilaterate(base, from_start, from_end):
    """A point measured by tape from both ends of a base.

    `along = (from_start² - from_end² + base²) / 2 base`, `across = √(from_start² - along²)`. An error of 1 mm in both
    readings moves the point by at most `along_per_mm` and `across_per_mm`; that of the base is not counted. Choose bases
    that make both small: a point about half as far off as the base is long.

    Parameters
    ----------
    base : array_like
        between the two known points (mm, 1 to 100000)
    from_start : array_like
        reading from the start of the base (mm, 1 to 100000)
    from_end : array_like
        reading from the end of the base (mm, 1 to 100000)

    Returns
    -------
    along : float
        From the start along the base, negative behind the start (mm)
    across : float
        Square to the base (mm)
    along_per_mm : float
        How far along the base the point moves at worst, for each mm that both readings are off
    across_per_mm : float
        How far across the base the point moves at worst, for each mm that both readings are off
    doubts : int
        `TRIANGLE_FLAT` when `across_per_mm` passes 5, `TRIANGLE_TALL` when `along_per_mm` does (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `from_end`, with the readings between which the
        three make a triangle.

    Notes
    -----
    Source: Law of cosines; the height by W. Kahan, *Miscalculating Area and Angles of a Needle-like Triangle* (2014), which keeps
    its digits in flat triangles. Doubt over 5: common practice of survey, no source.

    Example: trilaterate(base=500, from_start=300, from_end=400) gives along 180, across 240, along_per_mm 1.4, across_per_mm 1.4, doubts 0
    """
    if type(base) is float and type(from_start) is float and type(from_end) is float:
        return _new(Trilaterate, _core.one_trilaterate(base, from_start, from_end))
    return _call.scalars("trilaterate", Trilaterate, ("base", "from_start", "from_end",), (base, from_start, from_end,))


def tucks(finished, count, depth, spacing):
    """Cloth and marking for tucks stitched an even distance apart.

    `flat = finished + 2 · count · depth`; fold lines are marked `spacing + 2 · depth` apart on the flat cloth. A tuck covers
    its depth of the spacing: blind tucks have `spacing = depth`. Tuck the cloth first, then cut the piece from it.

    Parameters
    ----------
    finished : array_like
        width when tucked (mm, 1 to 100000)
    count : array_like of int
        number of tucks (1 to 1000)
    depth : array_like
        depth of each tuck, stitching to fold (mm, 0.1 to 1000)
    spacing : array_like
        from stitching to stitching when tucked (mm, 0.1 to 10000)

    Returns
    -------
    flat : float
        Width before tucking, without allowances (mm)
    taken_up : float
        Cloth that all tucks take up (mm)
    fold_pitch : float
        From fold line to fold line on the flat cloth (mm)
    gap : float
        What shows between a tuck's fold and the next one's stitching; 0 for blind tucks (mm)
    margin : float
        Width left beside the first and the last stitching, together (mm)
    doubts : int
        `PLEATS_OVERLAP` when tucks lie over each other (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `spacing` when the tucks do not fit in the width.

    Notes
    -----
    Source: L. I. Baldt, *Clothing for Women*, 1916, Decoration pt 4 (twice the depth times the number).
    `tests/vectors/tucks.csv` has hand-worked rows.

    Example: tucks(finished=150, count=8, depth=5, spacing=15) gives flat 230, taken_up 80, fold_pitch 25, gap 10, margin 45, doubts 0
    """
    if type(finished) is float and type(depth) is float and type(spacing) is float and type(count) is int:
        return _new(Tucks, _core.one_tucks(finished, count, depth, spacing))
    return _call.scalars("tucks", Tucks, ("finished", "count", "depth", "spacing",), (finished, count, depth, spacing,))


def turn_through(width, thickness, opening, packing=0.5):
    """Whether a garment part can be turned right side out through an opening: an estimate.

    The widest part, gathered in the hand, is a round bundle of its layers' section, of which cloth fills a share
    `packing`: `diameter = √(4 · width · thickness / (π · packing))`. An opening of flat width `w` is `2 · w` round, and
    passes it when `2 · w >= π · diameter`. Find the narrowest place on the way: a shoulder seam, a strap, the gap left in
    a lining; and that there is a way: a ring closed on itself cannot be turned.

    Parameters
    ----------
    width : array_like
        widest part that must pass, laid flat (mm, 1 to 100000)
    thickness : array_like
        all its layers together, pressed (mm, 0.01 to 1000)
    opening : array_like
        flat width of the narrowest place on the way (mm, 1 to 100000)
    packing : array_like, default 0.5
        share of the bundle that is cloth (0.1 to 1)

    Returns
    -------
    diameter : float
        Diameter of the bundle (mm)
    least_opening : float
        Least flat width of an opening that it passes (mm)
    spare : float
        What the opening is wider than that; negative when the bundle does not pass (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Plane geometry; the packing of a half is a guess from memory, so the answer is an estimate: try with a scrap of as many
    layers. `tests/vectors/turn_through.csv` has hand-worked rows.

    Example: turn_through(width=250, thickness=1.6, opening=60, packing=0.5) gives diameter 31.92, least_opening 50.13, spare 9.87
    """
    if type(width) is float and type(thickness) is float and type(opening) is float and type(packing) is float:
        return _new(TurnThrough, _core.one_turn_through(width, thickness, opening, packing))
    return _call.scalars("turn_through", TurnThrough, ("width", "thickness", "opening", "packing",), (width, thickness, opening, packing,))


def turned_hem(length, depth, turn_in=6.0, roll=0.0):
    """Allowance and cut length for a hem that is turned up, its raw edge turned in.

    `allowance = depth + turn_in + folds · roll`: two folds, or one where nothing is turned in. A hem of two equal turns,
    as for sheer cloth, has `turn_in = depth`. The roll is the cloth that each fold takes by its thickness; fold a sample
    to learn it.

    Parameters
    ----------
    length : array_like
        finished length, upper edge or seam line to hem edge (mm, 1 to 100000)
    depth : array_like
        finished depth of the hem (mm, 0 to 10000)
    turn_in : array_like, default 6
        turned in at the raw edge; 0 where it is overcast or bound (mm, 0 to 10000, <= depth)
    roll : array_like, default 0
        cloth that each fold takes by its thickness (mm, 0 to 100)

    Returns
    -------
    allowance : float
        Hem allowance, from the finished edge to the raw edge (mm)
    cut_length : float
        Length to cut, with that allowance and no other (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `turn_in` when it is deeper than the hem.

    Notes
    -----
    Source: Arithmetic; a turn of 1/4 in by L. I. Baldt, *Clothing for Women*, 1916, "Simple Dress of Wool" (6 mm here). Depths are
    habit, and authors differ: T. Johnson, *It's Fun to Sew a Cotton School Dress*, 2 to 3 in on moderate flare, 1 1/2 in on
    more, 1/4 in or a rolled hem on a circle; bellasunshinedesigns.com 1 1/2 to 2 in straight, 1 1/2 A-line, 1 half circle, 1/2
    circle. What a flare bears, `hem_on_curve` says.

    Example: turned_hem(length=600, depth=40, turn_in=6, roll=0) gives allowance 46, cut_length 646
    """
    if type(length) is float and type(depth) is float and type(turn_in) is float and type(roll) is float:
        return _new(TurnedHem, _core.one_turned_hem(length, depth, turn_in, roll))
    return _call.scalars("turned_hem", TurnedHem, ("length", "depth", "turn_in", "roll",), (length, depth, turn_in, roll,))


def v_neck(half_width, depth, stay_ratio=0.97):
    """Edge of a V neck, how far it lies off grain, and the tape that stays it.

    `edge = √(half_width² + depth²)`, `off_grain = atan(half_width / depth)`, `stay = edge · stay_ratio`. Any edge off grain
    stretches as it is handled, most of all near 45°: staystitch at once, and sew on a tape cut a little shorter than the
    edge. A tape below 0.9 puckers, so less is refused. If the point falls below the bust, nothing holds the edge to the
    body: pin it and see (`dart_from_gape`).

    Parameters
    ----------
    half_width : array_like
        middle to the edge's top at the shoulder, straight across (mm, 0 to 10000)
    depth : array_like
        from that level down to the point (mm, 1 to 10000)
    stay_ratio : array_like, default 0.97
        tape over edge (0.9 to 1)

    Returns
    -------
    edge : float
        Length of the straight edge on one side (mm)
    off_grain_deg : float
        Angle of the edge from the grain that runs down the middle (deg)
    stay : float
        Length of the tape that stays the edge on one side (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Plane geometry; the ratio is common practice, no source. `tests/vectors/v_neck.csv` has hand-worked rows.

    Example: v_neck(half_width=80, depth=300, stay_ratio=0.97) gives edge 310.48, off_grain_deg 14.93, stay 301.17
    """
    if type(half_width) is float and type(depth) is float and type(stay_ratio) is float:
        return _new(VNeck, _core.one_v_neck(half_width, depth, stay_ratio))
    return _call.scalars("v_neck", VNeck, ("half_width", "depth", "stay_ratio",), (half_width, depth, stay_ratio,))


def waist_hip_doubts(waist, hip):
    """Doubts on a waist and a hip together.

    A waist above the hip (`WAIST_OVER_HIP`) may be the two in each other's place, and is also the shape of some bodies.
    A hip more than 450 mm above the waist (`HIP_FAR_OVER_WAIST`) may be half a waist.

    Parameters
    ----------
    waist : array_like
        girth of waist (mm, 1 to 100000)
    hip : array_like
        girth of hip (mm, 1 to 100000)

    Returns
    -------
    int
        The doubts (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Thresholds are common practice, no source. Hip less waist is 57 to 252 mm for women and -21 to 164 mm for men (5th and
    95th percentiles, from the data of Gordon et al., *2012 Anthropometric Survey of U.S. Army Personnel*,
    NATICK/TR-15/007, 2014; waist taken at the navel): more than one man in twenty has the first doubt.

    Example: waist_hip_doubts(waist=852, hip=1016) gives 0
    """
    if type(waist) is float and type(hip) is float:
        return _core.one_waist_hip_doubts(waist, hip)
    return _call.scalars("waist_hip_doubts", None, ("waist", "hip",), (waist, hip,))


def washes(length, first_pct, later_pct, washes):
    """Length after several washes, of which the first usually takes most.

    Changes multiply, they do not add: `after = length · (1 + first / 100) · (1 + later / 100)^(washes - 1)`. Wash a sample
    until two measures agree: no rule foretells how many times that is.

    A first change of less than 0.2 %, which no tape shows, is doubted: 0.05 may be a share.

    Parameters
    ----------
    length : array_like
        length before any wash (mm, 0 to 1000000)
    first_pct : array_like
        change in the first wash: shrinkage negative (%, -90 to 100)
    later_pct : array_like
        change in each wash after it (%, -90 to 100)
    washes : array_like of int
        how many washes (0 to 1000)

    Returns
    -------
    after : float
        Length after all washes (mm)
    change_pct : float
        Change from the first length to the last (%)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `washes` when the length grows past all bounds.

    Notes
    -----
    Source: ISO 5077:2007 (definition of a change), repeated. `tests/vectors/washes.csv` has hand-worked rows.

    Example: washes(length=600, first_pct=-5, later_pct=-1, washes=3) gives after 558.657, change_pct -6.8905, doubts 0
    """
    if type(length) is float and type(first_pct) is float and type(later_pct) is float and type(washes) is int:
        return _new(Washes, _core.one_washes(length, first_pct, later_pct, washes))
    return _call.scalars("washes", Washes, ("length", "first_pct", "later_pct", "washes",), (length, first_pct, later_pct, washes,))


def wearing_ease(body, place):
    """Wearing ease of woven cloth, all round, as a range over the authors, and the girths it makes.

    `garment = body + ease`. Ease is what is needed to breathe, sit and reach; what the style has more is taste. Authors differ by as much as an inch:

    - bust: 1 1/2 to 2 in (Robinson), 2 1/2 in (one cited in an encyclopedia), 2 to 3 in (a tailor's notes);
    - waist of a dress: 3/4 to 1 in, 1 in, 1 to 2 in, in that order;
    - waist of a skirt or trousers: 1/2 to 3/4 in (Robinson; the others do not tell it apart);
    - hip: 2 to 2 3/4 in, 3 in, 2 to 3 in;
    - a man's shirt at the chest: 1 1/2 to 2 1/2 in fitted, up to 3 in classic (Robinson).

    The best ease is that of a garment that fits: measure it and take the body's girth off. Thick cloth and a lining need
    more, cloth that stretches less (`negative_ease`).

    A girth below 300 mm or above 2000 mm is doubted.

    Parameters
    ----------
    body : array_like
        girth of the body there (mm, 1 to 100000)
    place : EasePlace
        where it is asked

    Returns
    -------
    low : float
        The least that an author gives, all round (mm)
    high : float
        The most that an author gives, all round (mm)
    garment_low : float
        Finished girth with the least (mm)
    garment_high : float
        Finished girth with the most (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: S. Robinson, costume text, Central Washington University, ch. 16; an encyclopedia's article "Ease (sewing)", first of its
    two cited sources; vintagetailor.blogspot.com, 2012. `tests/vectors/wearing_ease.csv` has each.

    Example: wearing_ease(body=1000, place='bust') gives low 38.1, high 76.2, doubts 0
    """
    place = _call.choice(EasePlace, place, "wearing_ease", "place")
    if type(body) is float:
        return _new(WearingEase, _core.one_wearing_ease(body, place))
    return _call.scalars("wearing_ease", WearingEase, ("body", "place",), (body, place,))


def width_conversion(length, width, new_width):
    """Length of cloth of one width that does for a length of another, as a range.

    `by_area = length · width / new_width`. Tables handed down for this follow no formula: over all their cells they give
    0.90 to 1.12 times the area's length, and so does this. It is for a guess before buying; lay the pieces to know. A
    piece wider than the new cloth is not seen here.

    Cloth narrower than 200 mm is doubted: 150 may be in centimetres.

    Parameters
    ----------
    length : array_like
        length that is enough (mm, 0 to 1000000)
    width : array_like
        width of that cloth (mm, 10 to 100000)
    new_width : array_like
        width of the cloth to be had (mm, 10 to 100000)

    Returns
    -------
    by_area : float
        Length of the same area (mm)
    low : float
        Least that the printed tables give, 0.9 times the area's (mm)
    high : float
        Most that the printed tables give, 1.12 times the area's (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: The extension services' table as copied at sewwithsarah.com, greenspun.com and hookedonsewing.com (credited to Rutgers
    Cooperative Extension, from memory); the range is that of its cells.

    Example: width_conversion(length=2000, width=900, new_width=1500) gives by_area 1200, low 1080, high 1344, doubts 0
    """
    if type(length) is float and type(width) is float and type(new_width) is float:
        return _new(WidthConversion, _core.one_width_conversion(length, width, new_width))
    return _call.scalars("width_conversion", WidthConversion, ("length", "width", "new_width",), (length, width, new_width,))


def wrap_skirt(waist, hip, overlap):
    """Widths of a skirt with a back and two fronts that lap over each other.

    A back of half the girth, and fronts of a quarter and half the overlap each: `front = girth / 4 + overlap / 2`. The
    overlap runs straight down, the same at waist and hip; facings or hems of the two front edges are extra. The skirt
    opens when a step spreads the hem by more than the overlap there, so sit and stride in it, pinned, before cutting. The
    lap must equal that of the band, and of the bodice where there is one.

    Waist and hip are doubted alone and together, as `girth_doubts` and
    `waist_hip_doubts` do.

    Parameters
    ----------
    waist : array_like
        finished waist, ease included, darts closed (mm, 1 to 100000)
    hip : array_like
        finished hip, ease included (mm, 1 to 100000)
    overlap : array_like
        how far one front lies over the other (mm, 0 to 100000, <= waist)

    Returns
    -------
    back_waist : float
        Back at the waist, side seam to side seam (mm)
    back_hip : float
        Back at the hip (mm)
    front_waist : float
        Each front at the waist, side seam to its finished edge (mm)
    front_hip : float
        Each front at the hip (mm)
    waist_edge : float
        Waist edge of all three parts, which is the length of its band without ties (mm)
    wrap_pct : float
        How far each front reaches past the centre line, as a share of half a front (%)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `overlap` when it goes more than once round.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/wrap_skirt.csv` has hand-worked rows.

    Example: wrap_skirt(waist=720, hip=1020, overlap=240) gives back_waist 360, back_hip 510, front_waist 300, front_hip 375, waist_edge 960, wrap_pct 66.67, doubts 0
    """
    if type(waist) is float and type(hip) is float and type(overlap) is float:
        return _new(WrapSkirt, _core.one_wrap_skirt(waist, hip, overlap))
    return _call.scalars("wrap_skirt", WrapSkirt, ("waist", "hip", "overlap",), (waist, hip, overlap,))


def xyz_from_lab(l, a, b):
    """Tristimulus values of a colour given in CIELAB, under daylight D65: `lab_from_xyz` turned round.

    Parameters
    ----------
    l : array_like
        lightness L* (0 to 100)
    a : array_like
        a*: green below 0, red above (-200 to 200)
    b : array_like
        b*: blue below 0, yellow above (-200 to 200)

    Returns
    -------
    x : float
        X
    y : float
        Y, the luminance: share of the white's
    z : float
        Z

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: CIE 15, *Colorimetry*, CIELAB (1976).

    Example: xyz_from_lab(l=41.52787529, a=52.63858304, b=26.92317922) gives x 0.20654008, y 0.12197225, z 0.05136952
    """
    if type(l) is float and type(a) is float and type(b) is float:
        return _new(Xyz, _core.one_xyz_from_lab(l, a, b))
    return _call.scalars("xyz_from_lab", Xyz, ("l", "a", "b",), (l, a, b,))


def xyz_from_srgb(red, green, blue):
    """Tristimulus values of a colour given by its screen levels.

    Parameters
    ----------
    red : array_like
        red level (0 to 255)
    green : array_like
        green level (0 to 255)
    blue : array_like
        blue level (0 to 255)

    Returns
    -------
    x : float
        X
    y : float
        Y, the luminance: share of the white's
    z : float
        Z

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: IEC 61966-2-1 (sRGB), its matrix with four decimals. A matrix worked out from the primaries differs by less than
    0.0001; a grey then has an a* of 0 and not of 0.005.

    Example: xyz_from_srgb(red=255, green=255, blue=255) gives x 0.9505, y 1, z 1.089
    """
    if type(red) is float and type(green) is float and type(blue) is float:
        return _new(Xyz, _core.one_xyz_from_srgb(red, green, blue))
    return _call.scalars("xyz_from_srgb", Xyz, ("red", "green", "blue",), (red, green, blue,))


def zigzag_buttonhole(slit, bead=2.0, gap=0.5, bar=2.0, spacing=0.4):
    """Size over all of a buttonhole worked in zigzag: two beads and two bars about a slit.

    `length = slit + 2 · bar`, `width = 2 · bead + gap`, and each side takes `ceil(slit / spacing)` stitches. It is the slit that
    the button passes (`buttonhole`); the whole must lie on the button stand. Work one on a
    scrap of the same layers. Cut from both ends towards the middle, a pin across each bar.

    Parameters
    ----------
    slit : array_like
        length of the slit (mm, 1 to 300)
    bead : array_like, default 2
        width of the zigzag on each side (mm, 0.1 to 20)
    gap : array_like, default 0.5
        between the two sides, where it is cut (mm, 0 to 10)
    bar : array_like, default 2
        length of the bar at each end (mm, 0 to 20)
    spacing : array_like, default 0.4
        stitch length of the zigzag (mm, 0.05 to 10)

    Returns
    -------
    length : float
        Length over all, bars included (mm)
    width : float
        Width over all (mm)
    stitches : int
        Stitches of the two sides together

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic; the defaults are from memory of home machines, no source: measure a hole of your own. Only a bound hole is
    otherwise: at most 6 mm wide, each welt 3 mm (frkbustad.blogspot.com, 2010).

    Example: zigzag_buttonhole(slit=22, bead=2, gap=0.5, bar=2, spacing=0.4) gives length 26, width 4.5, stitches 110
    """
    if type(slit) is float and type(bead) is float and type(gap) is float and type(bar) is float and type(spacing) is float:
        return _new(ZigzagButtonhole, _core.one_zigzag_buttonhole(slit, bead, gap, bar, spacing))
    return _call.scalars("zigzag_buttonhole", ZigzagButtonhole, ("slit", "bead", "gap", "bar", "spacing",), (slit, bead, gap, bar, spacing,))


def zip_length(opening, gap=6.0, beyond=0.0, allowance=15.0, graduation=20.0):
    """Zip for an opening: its length from stop to stop, and where the stops lie.

    `needed = opening - gap + beyond`, bought in the next length that is sold. The gap leaves room above the slider for a hook
    or for the turn of a facing; where the teeth end at a band's seam it is small. A concealed zip is sewn before the seam
    below it and must run on beyond the opening, or its slider cannot be brought down past the last stitch. A zip is shortened
    at the bottom, by a bar of stitches over the teeth; an open-ended one at the top only. Whether the opening passes the hip
    is asked of `head_opening`.

    Parameters
    ----------
    opening : array_like
        seam line at the top to the lower end of the opening (mm, 10 to 5000)
    gap : array_like, default 6
        seam line at the top down to the top stop (mm, 0 to 500, < opening)
    beyond : array_like, default 0
        what the zip runs on below the opening; some 25 if concealed (mm, 0 to 500)
    allowance : array_like, default 15
        raw edge to seam line at the top (mm, 0 to 1000)
    graduation : array_like, default 20
        step between the lengths that are sold (mm, 1 to 1000)

    Returns
    -------
    needed : float
        Length needed, top stop to bottom stop (mm)
    buy : float
        Length to buy, the next that is sold (mm)
    shorten : float
        What that is too long, to be taken off by a new bottom stop (mm)
    top_stop : float
        Top stop from the raw edge at the top (mm)
    bottom_stop : float
        Bottom stop from the raw edge at the top (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `gap` when it is the whole opening.

    Notes
    -----
    Source: Arithmetic; the defaults are common practice, no source. `tests/vectors/zip_length.csv` has hand-worked rows.

    Example: zip_length(opening=200, gap=6, beyond=0, allowance=15, graduation=20) gives needed 194, buy 200, shorten 6, top_stop 21, bottom_stop 215
    """
    if type(opening) is float and type(gap) is float and type(beyond) is float and type(allowance) is float and type(graduation) is float:
        return _new(ZipLength, _core.one_zip_length(opening, gap, beyond, allowance, graduation))
    return _call.scalars("zip_length", ZipLength, ("opening", "gap", "beyond", "allowance", "graduation",), (opening, gap, beyond, allowance, graduation,))


def zip_opening(zip, gap=6.0, beyond=0.0):
    """Opening that a zip there is serves.

    `zip_length` the other way: `opening = zip + gap - beyond`. For a zip saved from the old garment: run it a hundred times
    first, and see that both stops hold.

    Parameters
    ----------
    zip : array_like
        length of the zip, top stop to bottom stop (mm, 10 to 5000)
    gap : array_like, default 6
        seam line at the top down to the top stop (mm, 0 to 500)
    beyond : array_like, default 0
        what the zip runs on below the opening (mm, 0 to 500)

    Returns
    -------
    float
        Seam line at the top to the lower end of the opening (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `beyond` when nothing of the opening is left.

    Notes
    -----
    Source: As `zip_length`.

    Example: zip_opening(zip=200, gap=6, beyond=25) gives 181
    """
    if type(zip) is float and type(gap) is float and type(beyond) is float:
        return _core.one_zip_opening(zip, gap, beyond)
    return _call.scalars("zip_opening", None, ("zip", "gap", "beyond",), (zip, gap, beyond,))


__all__ = [
    "BandMake",
    "Basis",
    "Bath",
    "BindingFold",
    "ButtonShape",
    "EasePlace",
    "EdgeCurve",
    "Fibre",
    "Finish",
    "InBath",
    "InsertPlace",
    "Reaction",
    "Rounding",
    "SquareEnds",
    "Stage",
    "StitchType",
    "Style",
    "Swatch",
    "ArcFromRise",
    "StockVolume",
    "AvailableChlorine",
    "Batches",
    "BathVolume",
    "BiasStrips",
    "BiasTube",
    "BinderSolids",
    "BindingStrips",
    "BleachDilution",
    "BleachTime",
    "BoxPleats",
    "Breadths",
    "ButtonForHole",
    "ButtonLoop",
    "ButtonStand",
    "CapEase",
    "CarriedLiquor",
    "Casing",
    "CircleSkirt",
    "CircleSkirtOnCloth",
    "ComponentCheck",
    "CoverMark",
    "CurvedBand",
    "CurvedBinding",
    "CutForChange",
    "CutState",
    "Dart",
    "DartEquivalent",
    "DartFromGape",
    "DartInPanel",
    "DoubleDart",
    "Elastic",
    "FiveGores",
    "Flounce",
    "FoldedBand",
    "Frustum",
    "Gathers",
    "GatherSections",
    "Godet",
    "Gore",
    "Gusset",
    "HeadOpening",
    "HemLetDown",
    "HemOnCurve",
    "HipWaistDrop",
    "HolesLeft",
    "InsertStrip",
    "KnifePleats",
    "Lab",
    "LengthChain",
    "ChainShares",
    "LetOut",
    "LevelLine",
    "LiningLength",
    "LiquorShares",
    "LoopSlack",
    "MixTemperature",
    "NapLayout",
    "NeedleBlade",
    "NegativeEase",
    "Neutraliser",
    "OffCentreOpening",
    "Overdye",
    "Owf",
    "PanelByOffsets",
    "PanelByTriangles",
    "PhotoMap",
    "PiecedLength",
    "PlantDyestuff",
    "PooledStrength",
    "PuffSpread",
    "Repeats",
    "Ribbing",
    "Rinses",
    "RoundedSet",
    "Ruffle",
    "SeamPleat",
    "SectionedBand",
    "ShapedBand",
    "Shirring",
    "ShrinkPair",
    "SizeStep",
    "SnipSpacing",
    "SpacingByPitch",
    "SpacingThrough",
    "Srgb",
    "StraightBand",
    "TakeIn",
    "Tiers",
    "ToleranceStack",
    "ToleranceStackList",
    "Trilaterate",
    "Tucks",
    "TurnThrough",
    "TurnedHem",
    "VNeck",
    "Washes",
    "WearingEase",
    "WidthConversion",
    "WrapSkirt",
    "Xyz",
    "ZigzagButtonhole",
    "ZipLength",
    "arc_from_rise",
    "assistant_volume",
    "available_chlorine",
    "batches",
    "bath_volume",
    "bias_along_selvedge",
    "bias_square",
    "bias_strip_length",
    "bias_strips",
    "bias_tube",
    "binder_solids",
    "binding_length",
    "binding_strips",
    "binding_width",
    "bleach_dilution",
    "bleach_time",
    "body_length_doubts",
    "box_pleats",
    "box_pleats_count",
    "box_pleats_depth",
    "box_pleats_finished",
    "breadths",
    "button_diameter",
    "button_for_hole",
    "button_for_stand",
    "button_loop",
    "button_stand",
    "buttonhole",
    "cap_ease",
    "cap_for_ease",
    "cap_width_bound",
    "carried_liquor",
    "casing",
    "ciede2000",
    "circle_skirt",
    "circle_skirt_fraction",
    "circle_skirt_longest",
    "cloth_mass",
    "cloth_to_buy",
    "component_check",
    "cover_mark",
    "curved_band",
    "curved_binding",
    "cut_for_change",
    "cut_state",
    "dart",
    "dart_equivalent",
    "dart_from_gape",
    "dart_in_panel",
    "dart_turned",
    "dart_width_at",
    "deepest_hem",
    "dimensional_change",
    "double_dart",
    "elastic",
    "even_spacing",
    "five_gores",
    "flounce",
    "folded_band",
    "format_length",
    "front_back_doubts",
    "frustum",
    "gather_ratio",
    "gather_sections",
    "gathers",
    "girth_doubts",
    "godet",
    "gore",
    "gsm_from_ounces",
    "gusset",
    "head_opening",
    "hem_let_down",
    "hem_on_curve",
    "hip_waist_drop",
    "holes_left",
    "insert_strip",
    "k_over_s",
    "knife_pleats",
    "knife_pleats_count",
    "knife_pleats_depth",
    "knife_pleats_finished",
    "lab_from_srgb",
    "lab_from_xyz",
    "lacing",
    "length_chain",
    "length_chain_shares",
    "let_out",
    "level_line",
    "linear_light",
    "lining_free_length",
    "lining_length",
    "lining_width",
    "liquor_shares",
    "loop_slack",
    "mix_temperature",
    "nap_layout",
    "neck_bust_doubts",
    "needle_blade",
    "needle_metric",
    "negative_ease",
    "neutraliser",
    "off_centre_opening",
    "overdye",
    "owf",
    "panel_by_offsets",
    "panel_by_triangles",
    "parse_length",
    "photo_map",
    "pieced_length",
    "piping_width",
    "plant_dyestuff",
    "pooled_strength",
    "puff_spread",
    "reflectance",
    "relative_strength",
    "remaining_width",
    "repeats",
    "ribbing",
    "rinses",
    "round_set",
    "round_to",
    "ruffle",
    "screen_level",
    "seam_pleat",
    "sectioned_band",
    "shaped_band",
    "share",
    "shirring",
    "shrink_pair",
    "size_step",
    "skew",
    "skew_diagonals",
    "snip_spacing",
    "spacing_by_pitch",
    "spacing_through",
    "srgb_from_lab",
    "srgb_from_xyz",
    "stitch_length",
    "stock_volume",
    "straight_band",
    "straight_band_depth",
    "stretch_pct",
    "take_in",
    "tex_from_cotton_count",
    "tex_from_denier",
    "tex_from_metric_count",
    "thread_for_seam",
    "thread_ratio",
    "tiers",
    "tolerance_stack",
    "tolerance_stack_list",
    "trilaterate",
    "tucks",
    "turn_through",
    "turned_hem",
    "v_neck",
    "waist_hip_doubts",
    "washes",
    "wearing_ease",
    "width_conversion",
    "wrap_skirt",
    "xyz_from_lab",
    "xyz_from_srgb",
    "zigzag_buttonhole",
    "zip_length",
    "zip_opening",
]
