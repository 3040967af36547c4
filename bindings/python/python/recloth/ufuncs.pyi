# Written by `cargo xtask generate` from the doc comments of the core; do not edit.
import numpy as np
import recloth

arc_from_rise: recloth.ArcFromRise[np.ufunc]
assistant_volume: recloth.StockVolume[np.ufunc, np.ufunc]
available_chlorine: recloth.AvailableChlorine[np.ufunc, np.ufunc]
bath_volume: recloth.BathVolume[np.ufunc, np.ufunc]
bias_along_selvedge: np.ufunc
bias_square: np.ufunc
bias_strip_length: np.ufunc
bias_strips: recloth.BiasStrips[np.ufunc, np.ufunc]
bias_tube: recloth.BiasTube[np.ufunc, np.ufunc]
binder_solids: recloth.BinderSolids[np.ufunc, np.ufunc]
binding_length: np.ufunc
binding_strips: recloth.BindingStrips[np.ufunc, np.ufunc]
binding_width: np.ufunc
bleach_dilution: recloth.BleachDilution[np.ufunc, np.ufunc]
body_length_doubts: np.ufunc
box_pleats: recloth.BoxPleats[np.ufunc, np.ufunc, np.ufunc]
box_pleats_count: recloth.BoxPleats[np.ufunc, np.ufunc, np.ufunc]
box_pleats_depth: recloth.BoxPleats[np.ufunc, np.ufunc, np.ufunc]
box_pleats_finished: recloth.BoxPleats[np.ufunc, np.ufunc, np.ufunc]
breadths: recloth.Breadths[np.ufunc, np.ufunc]
button_diameter: np.ufunc
button_for_hole: recloth.ButtonForHole[np.ufunc]
button_for_stand: np.ufunc
button_loop: recloth.ButtonLoop[np.ufunc, np.ufunc]
button_stand: recloth.ButtonStand[np.ufunc]
buttonhole: np.ufunc
cap_ease: recloth.CapEase[np.ufunc, np.ufunc]
cap_for_ease: np.ufunc
cap_width_bound: np.ufunc
carried_liquor: recloth.CarriedLiquor[np.ufunc, np.ufunc]
casing: recloth.Casing[np.ufunc]
ciede2000: np.ufunc
circle_skirt: recloth.CircleSkirt[np.ufunc, np.ufunc]
circle_skirt_fraction: recloth.CircleSkirtOnCloth[np.ufunc, np.ufunc]
circle_skirt_longest: recloth.CircleSkirtOnCloth[np.ufunc, np.ufunc]
cloth_mass: np.ufunc
cloth_to_buy: np.ufunc
component_check: recloth.ComponentCheck[np.ufunc, np.ufunc]
cover_mark: recloth.CoverMark[np.ufunc]
curved_binding: recloth.CurvedBinding[np.ufunc]
cut_for_change: recloth.CutForChange[np.ufunc, np.ufunc]
cut_state: recloth.CutState[np.ufunc]
dart: recloth.Dart[np.ufunc, np.ufunc]
dart_equivalent: recloth.DartEquivalent[np.ufunc, np.ufunc]
dart_from_gape: recloth.DartFromGape[np.ufunc]
dart_in_panel: recloth.DartInPanel[np.ufunc, np.ufunc]
dart_turned: np.ufunc
dart_width_at: np.ufunc
deepest_hem: np.ufunc
dimensional_change: np.ufunc
double_dart: recloth.DoubleDart[np.ufunc, np.ufunc]
elastic: recloth.Elastic[np.ufunc, np.ufunc]
even_spacing: np.ufunc
five_gores: recloth.FiveGores[np.ufunc, np.ufunc]
flounce: recloth.Flounce[np.ufunc]
folded_band: recloth.FoldedBand[np.ufunc]
front_back_doubts: np.ufunc
frustum: recloth.Frustum[np.ufunc]
gather_ratio: recloth.Gathers[np.ufunc, np.ufunc]
gathers: recloth.Gathers[np.ufunc, np.ufunc]
girth_doubts: np.ufunc
godet: recloth.Godet[np.ufunc]
gore: recloth.Gore[np.ufunc, np.ufunc]
gsm_from_ounces: np.ufunc
gusset: recloth.Gusset[np.ufunc]
head_opening: recloth.HeadOpening[np.ufunc, np.ufunc]
hem_let_down: recloth.HemLetDown[np.ufunc]
hem_on_curve: recloth.HemOnCurve[np.ufunc]
hip_waist_drop: recloth.HipWaistDrop[np.ufunc, np.ufunc]
holes_left: recloth.HolesLeft[np.ufunc, np.ufunc, np.ufunc]
insert_strip: recloth.InsertStrip[np.ufunc]
k_over_s: np.ufunc
knife_pleats: recloth.KnifePleats[np.ufunc, np.ufunc, np.ufunc]
knife_pleats_count: recloth.KnifePleats[np.ufunc, np.ufunc, np.ufunc]
knife_pleats_depth: recloth.KnifePleats[np.ufunc, np.ufunc, np.ufunc]
knife_pleats_finished: recloth.KnifePleats[np.ufunc, np.ufunc, np.ufunc]
lab_from_srgb: recloth.Lab[np.ufunc]
lab_from_xyz: recloth.Lab[np.ufunc]
lacing: np.ufunc
let_out: recloth.LetOut[np.ufunc, np.ufunc]
level_line: recloth.LevelLine[np.ufunc]
linear_light: np.ufunc
lining_free_length: np.ufunc
lining_length: recloth.LiningLength[np.ufunc, np.ufunc]
lining_width: np.ufunc
loop_slack: recloth.LoopSlack[np.ufunc, np.ufunc]
nap_layout: recloth.NapLayout[np.ufunc, np.ufunc, np.ufunc]
neck_bust_doubts: np.ufunc
needle_blade: recloth.NeedleBlade[np.ufunc]
needle_metric: np.ufunc
negative_ease: recloth.NegativeEase[np.ufunc, np.ufunc]
neutraliser: recloth.Neutraliser[np.ufunc, np.ufunc]
off_centre_opening: recloth.OffCentreOpening[np.ufunc, np.ufunc]
overdye: recloth.Overdye[np.ufunc]
owf: recloth.Owf[np.ufunc, np.ufunc]
piping_width: np.ufunc
plant_dyestuff: recloth.PlantDyestuff[np.ufunc, np.ufunc]
puff_spread: recloth.PuffSpread[np.ufunc, np.ufunc]
reflectance: np.ufunc
relative_strength: np.ufunc
remaining_width: np.ufunc
repeats: recloth.Repeats[np.ufunc, np.ufunc]
ribbing: recloth.Ribbing[np.ufunc]
rinses: recloth.Rinses[np.ufunc, np.ufunc, np.ufunc]
round_to: np.ufunc
ruffle: recloth.Ruffle[np.ufunc, np.ufunc, np.ufunc]
screen_level: np.ufunc
seam_pleat: recloth.SeamPleat[np.ufunc]
shaped_band: recloth.ShapedBand[np.ufunc]
share: np.ufunc
shirring: recloth.Shirring[np.ufunc, np.ufunc, np.ufunc]
shrink_pair: recloth.ShrinkPair[np.ufunc, np.ufunc]
size_step: recloth.SizeStep[np.ufunc, np.ufunc]
skew: np.ufunc
skew_diagonals: np.ufunc
snip_spacing: recloth.SnipSpacing[np.ufunc]
spacing_by_pitch: recloth.SpacingByPitch[np.ufunc, np.ufunc]
srgb_from_lab: recloth.Srgb[np.ufunc, np.ufunc]
srgb_from_xyz: recloth.Srgb[np.ufunc, np.ufunc]
stitch_length: np.ufunc
stock_volume: recloth.StockVolume[np.ufunc, np.ufunc]
straight_band: recloth.StraightBand[np.ufunc, np.ufunc, np.ufunc]
straight_band_depth: np.ufunc
stretch_pct: np.ufunc
take_in: recloth.TakeIn[np.ufunc, np.ufunc]
tex_from_cotton_count: np.ufunc
tex_from_denier: np.ufunc
tex_from_metric_count: np.ufunc
thread_for_seam: np.ufunc
thread_ratio: np.ufunc
tolerance_stack: recloth.ToleranceStack[np.ufunc]
trilaterate: recloth.Trilaterate[np.ufunc, np.ufunc]
tucks: recloth.Tucks[np.ufunc, np.ufunc]
turn_through: recloth.TurnThrough[np.ufunc]
turned_hem: recloth.TurnedHem[np.ufunc]
v_neck: recloth.VNeck[np.ufunc]
waist_hip_doubts: np.ufunc
washes: recloth.Washes[np.ufunc, np.ufunc]
wearing_ease: recloth.WearingEase[np.ufunc, np.ufunc]
width_conversion: recloth.WidthConversion[np.ufunc, np.ufunc]
wrap_skirt: recloth.WrapSkirt[np.ufunc, np.ufunc]
xyz_from_lab: recloth.Xyz[np.ufunc]
xyz_from_srgb: recloth.Xyz[np.ufunc]
zigzag_buttonhole: recloth.ZigzagButtonhole[np.ufunc, np.ufunc]
zip_length: recloth.ZipLength[np.ufunc]
zip_opening: np.ufunc

__all__ = [
    "arc_from_rise",
    "assistant_volume",
    "available_chlorine",
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
    "front_back_doubts",
    "frustum",
    "gather_ratio",
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
    "let_out",
    "level_line",
    "linear_light",
    "lining_free_length",
    "lining_length",
    "lining_width",
    "loop_slack",
    "nap_layout",
    "neck_bust_doubts",
    "needle_blade",
    "needle_metric",
    "negative_ease",
    "neutraliser",
    "off_centre_opening",
    "overdye",
    "owf",
    "piping_width",
    "plant_dyestuff",
    "puff_spread",
    "reflectance",
    "relative_strength",
    "remaining_width",
    "repeats",
    "ribbing",
    "rinses",
    "round_to",
    "ruffle",
    "screen_level",
    "seam_pleat",
    "shaped_band",
    "share",
    "shirring",
    "shrink_pair",
    "size_step",
    "skew",
    "skew_diagonals",
    "snip_spacing",
    "spacing_by_pitch",
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
    "tolerance_stack",
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
