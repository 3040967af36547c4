# Written by `cargo xtask generate` from the doc comments of the core; do not edit.
"""Each answer of each function of numbers as a NumPy ufunc of one output.

Under the name of a function is what it returns, a ufunc in place of each number::

    ufuncs.circle_skirt.hem_length(waists, 600, 1)
    ufuncs.bias_square(lengths, widths)

Inputs are positional, choices are their numbers. An error gives NaN (0 for bits and counts) and
raises the invalid flag, so that ``np.errstate`` decides what becomes of it. Masked arrays, and
columns of pandas, polars, dask and xarray stay what they are.
"""

from . import _core, _functions

arc_from_rise = _functions.ArcFromRise(
    _core.arc_from_rise__radius,
    _core.arc_from_rise__length,
    _core.arc_from_rise__angle_deg,
)
assistant_volume = _functions.StockVolume(
    _core.assistant_volume__stock_ml,
    _core.assistant_volume__amount_g,
    _core.assistant_volume__doubts,
    _core.assistant_volume__cautions,
)
available_chlorine = _functions.AvailableChlorine(
    _core.available_chlorine__available_pct,
    _core.available_chlorine__trade_pct,
    _core.available_chlorine__doubts,
    _core.available_chlorine__cautions,
)
bath_volume = _functions.BathVolume(
    _core.bath_volume__volume_ml,
    _core.bath_volume__doubts,
    _core.bath_volume__cautions,
)
bias_along_selvedge = _core.bias_along_selvedge
bias_square = _core.bias_square
bias_strip_length = _core.bias_strip_length
bias_strips = _functions.BiasStrips(
    _core.bias_strips__strips,
    _core.bias_strips__longest,
    _core.bias_strips__joined,
    _core.bias_strips__kept_pct,
)
bias_tube = _functions.BiasTube(
    _core.bias_tube__turns,
    _core.bias_tube__length,
    _core.bias_tube__leftover,
)
binder_solids = _functions.BinderSolids(
    _core.binder_solids__bath_low_pct,
    _core.binder_solids__bath_high_pct,
    _core.binder_solids__owf_low_pct,
    _core.binder_solids__owf_high_pct,
    _core.binder_solids__doubts,
    _core.binder_solids__cautions,
)
binding_length = _core.binding_length
binding_strips = _functions.BindingStrips(
    _core.binding_strips__count,
    _core.binding_strips__spare,
)
binding_width = _core.binding_width
bleach_dilution = _functions.BleachDilution(
    _core.bleach_dilution__bleach_ml,
    _core.bleach_dilution__water_ml,
    _core.bleach_dilution__parts_water,
    _core.bleach_dilution__doubts,
    _core.bleach_dilution__cautions,
)
body_length_doubts = _core.body_length_doubts
box_pleats = _functions.BoxPleats(
    _core.box_pleats__flat,
    _core.box_pleats__finished,
    _core.box_pleats__count,
    _core.box_pleats__show,
    _core.box_pleats__depth,
    _core.box_pleats__intake,
    _core.box_pleats__taken_up,
    _core.box_pleats__ratio,
    _core.box_pleats__doubts,
)
box_pleats_count = _functions.BoxPleats(
    _core.box_pleats_count__flat,
    _core.box_pleats_count__finished,
    _core.box_pleats_count__count,
    _core.box_pleats_count__show,
    _core.box_pleats_count__depth,
    _core.box_pleats_count__intake,
    _core.box_pleats_count__taken_up,
    _core.box_pleats_count__ratio,
    _core.box_pleats_count__doubts,
)
box_pleats_depth = _functions.BoxPleats(
    _core.box_pleats_depth__flat,
    _core.box_pleats_depth__finished,
    _core.box_pleats_depth__count,
    _core.box_pleats_depth__show,
    _core.box_pleats_depth__depth,
    _core.box_pleats_depth__intake,
    _core.box_pleats_depth__taken_up,
    _core.box_pleats_depth__ratio,
    _core.box_pleats_depth__doubts,
)
box_pleats_finished = _functions.BoxPleats(
    _core.box_pleats_finished__flat,
    _core.box_pleats_finished__finished,
    _core.box_pleats_finished__count,
    _core.box_pleats_finished__show,
    _core.box_pleats_finished__depth,
    _core.box_pleats_finished__intake,
    _core.box_pleats_finished__taken_up,
    _core.box_pleats_finished__ratio,
    _core.box_pleats_finished__doubts,
)
breadths = _functions.Breadths(
    _core.breadths__count,
    _core.breadths__round,
    _core.breadths__spare,
)
button_diameter = _core.button_diameter
button_for_hole = _functions.ButtonForHole(
    _core.button_for_hole__diameter,
    _core.button_for_hole__creep,
)
button_for_stand = _core.button_for_stand
button_loop = _functions.ButtonLoop(
    _core.button_loop__visible,
    _core.button_loop__cut,
    _core.button_loop__cautions,
)
button_stand = _functions.ButtonStand(
    _core.button_stand__extension,
    _core.button_stand__past_rim,
    _core.button_stand__overlap,
)
buttonhole = _core.buttonhole
cap_ease = _functions.CapEase(
    _core.cap_ease__ease,
    _core.cap_ease__ease_pct,
    _core.cap_ease__doubts,
)
cap_for_ease = _core.cap_for_ease
cap_width_bound = _core.cap_width_bound
carried_liquor = _functions.CarriedLiquor(
    _core.carried_liquor__carried_ml,
    _core.carried_liquor__doubts,
    _core.carried_liquor__cautions,
)
casing = _functions.Casing(
    _core.casing__depth,
    _core.casing__allowance,
)
ciede2000 = _core.ciede2000
circle_skirt = _functions.CircleSkirt(
    _core.circle_skirt__waist_radius,
    _core.circle_skirt__hem_radius,
    _core.circle_skirt__hem_length,
    _core.circle_skirt__doubts,
)
circle_skirt_fraction = _functions.CircleSkirtOnCloth(
    _core.circle_skirt_fraction__fraction,
    _core.circle_skirt_fraction__length,
    _core.circle_skirt_fraction__waist_radius,
    _core.circle_skirt_fraction__hem_radius,
    _core.circle_skirt_fraction__hem_length,
    _core.circle_skirt_fraction__piece_angle_deg,
    _core.circle_skirt_fraction__cloth_length,
    _core.circle_skirt_fraction__doubts,
)
circle_skirt_longest = _functions.CircleSkirtOnCloth(
    _core.circle_skirt_longest__fraction,
    _core.circle_skirt_longest__length,
    _core.circle_skirt_longest__waist_radius,
    _core.circle_skirt_longest__hem_radius,
    _core.circle_skirt_longest__hem_length,
    _core.circle_skirt_longest__piece_angle_deg,
    _core.circle_skirt_longest__cloth_length,
    _core.circle_skirt_longest__doubts,
)
cloth_mass = _core.cloth_mass
cloth_to_buy = _core.cloth_to_buy
component_check = _functions.ComponentCheck(
    _core.component_check__bears,
    _core.component_check__colour,
    _core.component_check__doubts,
    _core.component_check__cautions,
)
cover_mark = _functions.CoverMark(
    _core.cover_mark__now,
    _core.cover_mark__depth,
    _core.cover_mark__ground_after,
    _core.cover_mark__mark_after,
    _core.cover_mark__after,
)
curved_binding = _functions.CurvedBinding(
    _core.curved_binding__seam,
    _core.curved_binding__stretch_pct,
    _core.curved_binding__width_pct,
)
cut_for_change = _functions.CutForChange(
    _core.cut_for_change__cut,
    _core.cut_for_change__added,
    _core.cut_for_change__doubts,
)
cut_state = _functions.CutState(
    _core.cut_state__finished,
    _core.cut_state__cut,
)
dart = _functions.Dart(
    _core.dart__leg,
    _core.dart__angle_deg,
    _core.dart__doubts,
)
dart_equivalent = _functions.DartEquivalent(
    _core.dart_equivalent__ease_pct,
    _core.dart_equivalent__gather_ratio,
    _core.dart_equivalent__tuck_depth,
    _core.dart_equivalent__doubts,
)
dart_from_gape = _functions.DartFromGape(
    _core.dart_from_gape__intake,
    _core.dart_from_gape__angle_deg,
)
dart_in_panel = _functions.DartInPanel(
    _core.dart_in_panel__intake_each,
    _core.dart_in_panel__leftover,
    _core.dart_in_panel__leg,
    _core.dart_in_panel__kink_deg,
    _core.dart_in_panel__doubts,
)
dart_turned = _core.dart_turned
dart_width_at = _core.dart_width_at
deepest_hem = _core.deepest_hem
dimensional_change = _core.dimensional_change
double_dart = _functions.DoubleDart(
    _core.double_dart__upper_leg,
    _core.double_dart__lower_leg,
    _core.double_dart__upper_angle_deg,
    _core.double_dart__lower_angle_deg,
    _core.double_dart__bend_deg,
    _core.double_dart__doubts,
)
elastic = _functions.Elastic(
    _core.elastic__round,
    _core.elastic__cut,
    _core.elastic__worn_pct,
    _core.elastic__passing_pct,
    _core.elastic__doubts,
    _core.elastic__cautions,
)
even_spacing = _core.even_spacing
five_gores = _functions.FiveGores(
    _core.five_gores__front_waist,
    _core.five_gores__side_waist,
    _core.five_gores__back_waist,
    _core.five_gores__front_hip,
    _core.five_gores__side_hip,
    _core.five_gores__back_hip,
    _core.five_gores__doubts,
)
flounce = _functions.Flounce(
    _core.flounce__inner_radius,
    _core.flounce__outer_radius,
    _core.flounce__hem,
    _core.flounce__ratio,
    _core.flounce__square,
)
folded_band = _functions.FoldedBand(
    _core.folded_band__cut_width,
    _core.folded_band__fold_line,
    _core.folded_band__inner,
)
front_back_doubts = _core.front_back_doubts
frustum = _functions.Frustum(
    _core.frustum__slant,
    _core.frustum__inner_radius,
    _core.frustum__outer_radius,
    _core.frustum__angle_deg,
    _core.frustum__area_mm2,
)
gather_ratio = _functions.Gathers(
    _core.gather_ratio__flat,
    _core.gather_ratio__taken_up,
    _core.gather_ratio__ratio,
    _core.gather_ratio__doubts,
)
gathers = _functions.Gathers(
    _core.gathers__flat,
    _core.gathers__taken_up,
    _core.gathers__ratio,
    _core.gathers__doubts,
)
girth_doubts = _core.girth_doubts
godet = _functions.Godet(
    _core.godet__angle_deg,
    _core.godet__chord,
    _core.godet__sagitta,
    _core.godet__added,
)
gore = _functions.Gore(
    _core.gore__waist_width,
    _core.gore__hip_width,
    _core.gore__hem_width,
    _core.gore__side_length,
    _core.gore__flare_deg,
    _core.gore__hem_rise,
    _core.gore__doubts,
)
gsm_from_ounces = _core.gsm_from_ounces
gusset = _functions.Gusset(
    _core.gusset__angle_deg,
    _core.gusset__long_diagonal,
    _core.gusset__cut_long,
    _core.gusset__cut_short,
)
head_opening = _functions.HeadOpening(
    _core.head_opening__least_slit,
    _core.head_opening__spare,
    _core.head_opening__doubts,
)
hem_let_down = _functions.HemLetDown(
    _core.hem_let_down__left,
    _core.hem_let_down__crease,
    _core.hem_let_down__stitching,
    _core.hem_let_down__longest,
    _core.hem_let_down__longest_faced,
)
hem_on_curve = _functions.HemOnCurve(
    _core.hem_on_curve__excess_pct,
    _core.hem_on_curve__excess,
    _core.hem_on_curve__raw_edge,
)
hip_waist_drop = _functions.HipWaistDrop(
    _core.hip_waist_drop__drop,
    _core.hip_waist_drop__doubts,
)
holes_left = _functions.HolesLeft(
    _core.holes_left__count,
    _core.holes_left__last,
    _core.holes_left__to_end,
    _core.holes_left__doubts,
)
insert_strip = _functions.InsertStrip(
    _core.insert_strip__finished,
    _core.insert_strip__cut_width,
    _core.insert_strip__cloth,
)
k_over_s = _core.k_over_s
knife_pleats = _functions.KnifePleats(
    _core.knife_pleats__flat,
    _core.knife_pleats__finished,
    _core.knife_pleats__count,
    _core.knife_pleats__show,
    _core.knife_pleats__depth,
    _core.knife_pleats__intake,
    _core.knife_pleats__taken_up,
    _core.knife_pleats__ratio,
    _core.knife_pleats__doubts,
)
knife_pleats_count = _functions.KnifePleats(
    _core.knife_pleats_count__flat,
    _core.knife_pleats_count__finished,
    _core.knife_pleats_count__count,
    _core.knife_pleats_count__show,
    _core.knife_pleats_count__depth,
    _core.knife_pleats_count__intake,
    _core.knife_pleats_count__taken_up,
    _core.knife_pleats_count__ratio,
    _core.knife_pleats_count__doubts,
)
knife_pleats_depth = _functions.KnifePleats(
    _core.knife_pleats_depth__flat,
    _core.knife_pleats_depth__finished,
    _core.knife_pleats_depth__count,
    _core.knife_pleats_depth__show,
    _core.knife_pleats_depth__depth,
    _core.knife_pleats_depth__intake,
    _core.knife_pleats_depth__taken_up,
    _core.knife_pleats_depth__ratio,
    _core.knife_pleats_depth__doubts,
)
knife_pleats_finished = _functions.KnifePleats(
    _core.knife_pleats_finished__flat,
    _core.knife_pleats_finished__finished,
    _core.knife_pleats_finished__count,
    _core.knife_pleats_finished__show,
    _core.knife_pleats_finished__depth,
    _core.knife_pleats_finished__intake,
    _core.knife_pleats_finished__taken_up,
    _core.knife_pleats_finished__ratio,
    _core.knife_pleats_finished__doubts,
)
lab_from_srgb = _functions.Lab(
    _core.lab_from_srgb__l,
    _core.lab_from_srgb__a,
    _core.lab_from_srgb__b,
)
lab_from_xyz = _functions.Lab(
    _core.lab_from_xyz__l,
    _core.lab_from_xyz__a,
    _core.lab_from_xyz__b,
)
lacing = _core.lacing
let_out = _functions.LetOut(
    _core.let_out__lacking,
    _core.let_out__each,
    _core.let_out__gained,
    _core.let_out__short_by,
    _core.let_out__doubts,
)
level_line = _functions.LevelLine(
    _core.level_line__radius,
    _core.level_line__chord,
    _core.level_line__sag,
    _core.level_line__length,
)
linear_light = _core.linear_light
lining_free_length = _core.lining_free_length
lining_length = _functions.LiningLength(
    _core.lining_length__seam_to_seam,
    _core.lining_length__straight,
    _core.lining_length__spare,
    _core.lining_length__fold,
    _core.lining_length__doubts,
)
lining_width = _core.lining_width
loop_slack = _functions.LoopSlack(
    _core.loop_slack__slack,
    _core.loop_slack__doubts,
)
nap_layout = _functions.NapLayout(
    _core.nap_layout__across_one_way,
    _core.nap_layout__across_turned,
    _core.nap_layout__length_one_way,
    _core.nap_layout__length_turned,
    _core.nap_layout__nap_extra,
    _core.nap_layout__doubts,
)
neck_bust_doubts = _core.neck_bust_doubts
needle_blade = _functions.NeedleBlade(
    _core.needle_blade__blade,
    _core.needle_blade__thread,
)
needle_metric = _core.needle_metric
negative_ease = _functions.NegativeEase(
    _core.negative_ease__girth,
    _core.negative_ease__ease,
    _core.negative_ease__furthest,
    _core.negative_ease__doubts,
)
neutraliser = _functions.Neutraliser(
    _core.neutraliser__chlorine_g,
    _core.neutraliser__amount_g,
    _core.neutraliser__ratio,
    _core.neutraliser__doubts,
    _core.neutraliser__cautions,
)
off_centre_opening = _functions.OffCentreOpening(
    _core.off_centre_opening__narrow_to_line,
    _core.off_centre_opening__wide_to_line,
    _core.off_centre_opening__narrow_cut,
    _core.off_centre_opening__wide_cut,
    _core.off_centre_opening__largest_shift,
    _core.off_centre_opening__dart_to_narrow,
    _core.off_centre_opening__dart_to_wide,
    _core.off_centre_opening__doubts,
)
overdye = _functions.Overdye(
    _core.overdye__pale,
    _core.overdye__deep,
    _core.overdye__pale_l,
    _core.overdye__deep_l,
)
owf = _functions.Owf(
    _core.owf__amount_g,
    _core.owf__doubts,
    _core.owf__cautions,
)
piping_width = _core.piping_width
plant_dyestuff = _functions.PlantDyestuff(
    _core.plant_dyestuff__low_g,
    _core.plant_dyestuff__high_g,
    _core.plant_dyestuff__doubts,
    _core.plant_dyestuff__cautions,
)
puff_spread = _functions.PuffSpread(
    _core.puff_spread__flat,
    _core.puff_spread__added,
    _core.puff_spread__spread_each,
    _core.puff_spread__strip_ratio,
    _core.puff_spread__doubts,
)
reflectance = _core.reflectance
relative_strength = _core.relative_strength
remaining_width = _core.remaining_width
repeats = _functions.Repeats(
    _core.repeats__repeats,
    _core.repeats__each,
    _core.repeats__total,
    _core.repeats__waste,
)
ribbing = _functions.Ribbing(
    _core.ribbing__round,
    _core.ribbing__cut_length,
    _core.ribbing__cut_width,
    _core.ribbing__stretch_pct,
)
rinses = _functions.Rinses(
    _core.rinses__rinses_low,
    _core.rinses__rinses_high,
    _core.rinses__left,
    _core.rinses__water_ml,
    _core.rinses__doubts,
    _core.rinses__cautions,
)
round_to = _core.round_to
ruffle = _functions.Ruffle(
    _core.ruffle__flat,
    _core.ruffle__cut_width,
    _core.ruffle__strips,
    _core.ruffle__cloth_length,
    _core.ruffle__doubts,
)
screen_level = _core.screen_level
seam_pleat = _functions.SeamPleat(
    _core.seam_pleat__first_edge,
    _core.seam_pleat__next_edge,
    _core.seam_pleat__intake,
)
shaped_band = _functions.ShapedBand(
    _core.shaped_band__inner_radius,
    _core.shaped_band__outer_radius,
    _core.shaped_band__angle_deg,
    _core.shaped_band__sagitta,
    _core.shaped_band__area_mm2,
)
share = _core.share
shirring = _functions.Shirring(
    _core.shirring__flat,
    _core.shirring__ratio,
    _core.shirring__rows,
    _core.shirring__stitching,
    _core.shirring__cautions,
)
shrink_pair = _functions.ShrinkPair(
    _core.shrink_pair__shell_after,
    _core.shrink_pair__lining_after,
    _core.shrink_pair__below,
    _core.shrink_pair__shell_cut,
    _core.shrink_pair__lining_cut,
    _core.shrink_pair__doubts,
)
size_step = _functions.SizeStep(
    _core.size_step__step,
    _core.size_step__each_edge,
    _core.size_step__doubts,
)
skew = _core.skew
skew_diagonals = _core.skew_diagonals
snip_spacing = _functions.SnipSpacing(
    _core.snip_spacing__spacing,
    _core.snip_spacing__flat,
)
spacing_by_pitch = _functions.SpacingByPitch(
    _core.spacing_by_pitch__count,
    _core.spacing_by_pitch__pitch,
)
srgb_from_lab = _functions.Srgb(
    _core.srgb_from_lab__red,
    _core.srgb_from_lab__green,
    _core.srgb_from_lab__blue,
    _core.srgb_from_lab__outside,
)
srgb_from_xyz = _functions.Srgb(
    _core.srgb_from_xyz__red,
    _core.srgb_from_xyz__green,
    _core.srgb_from_xyz__blue,
    _core.srgb_from_xyz__outside,
)
stitch_length = _core.stitch_length
stock_volume = _functions.StockVolume(
    _core.stock_volume__stock_ml,
    _core.stock_volume__amount_g,
    _core.stock_volume__doubts,
    _core.stock_volume__cautions,
)
straight_band = _functions.StraightBand(
    _core.straight_band__cut_length,
    _core.straight_band__cut_width,
    _core.straight_band__strips,
    _core.straight_band__doubts,
)
straight_band_depth = _core.straight_band_depth
stretch_pct = _core.stretch_pct
take_in = _functions.TakeIn(
    _core.take_in__excess,
    _core.take_in__each,
    _core.take_in__taken,
    _core.take_in__leftover,
    _core.take_in__doubts,
)
tex_from_cotton_count = _core.tex_from_cotton_count
tex_from_denier = _core.tex_from_denier
tex_from_metric_count = _core.tex_from_metric_count
thread_for_seam = _core.thread_for_seam
thread_ratio = _core.thread_ratio
tolerance_stack = _functions.ToleranceStack(
    _core.tolerance_stack__worst,
    _core.tolerance_stack__likely,
)
trilaterate = _functions.Trilaterate(
    _core.trilaterate__along,
    _core.trilaterate__across,
    _core.trilaterate__along_per_mm,
    _core.trilaterate__across_per_mm,
    _core.trilaterate__doubts,
)
tucks = _functions.Tucks(
    _core.tucks__flat,
    _core.tucks__taken_up,
    _core.tucks__fold_pitch,
    _core.tucks__gap,
    _core.tucks__margin,
    _core.tucks__doubts,
)
turn_through = _functions.TurnThrough(
    _core.turn_through__diameter,
    _core.turn_through__least_opening,
    _core.turn_through__spare,
)
turned_hem = _functions.TurnedHem(
    _core.turned_hem__allowance,
    _core.turned_hem__cut_length,
)
v_neck = _functions.VNeck(
    _core.v_neck__edge,
    _core.v_neck__off_grain_deg,
    _core.v_neck__stay,
)
waist_hip_doubts = _core.waist_hip_doubts
washes = _functions.Washes(
    _core.washes__after,
    _core.washes__change_pct,
    _core.washes__doubts,
)
wearing_ease = _functions.WearingEase(
    _core.wearing_ease__low,
    _core.wearing_ease__high,
    _core.wearing_ease__garment_low,
    _core.wearing_ease__garment_high,
    _core.wearing_ease__doubts,
)
width_conversion = _functions.WidthConversion(
    _core.width_conversion__by_area,
    _core.width_conversion__low,
    _core.width_conversion__high,
    _core.width_conversion__doubts,
)
wrap_skirt = _functions.WrapSkirt(
    _core.wrap_skirt__back_waist,
    _core.wrap_skirt__back_hip,
    _core.wrap_skirt__front_waist,
    _core.wrap_skirt__front_hip,
    _core.wrap_skirt__waist_edge,
    _core.wrap_skirt__wrap_pct,
    _core.wrap_skirt__doubts,
)
xyz_from_lab = _functions.Xyz(
    _core.xyz_from_lab__x,
    _core.xyz_from_lab__y,
    _core.xyz_from_lab__z,
)
xyz_from_srgb = _functions.Xyz(
    _core.xyz_from_srgb__x,
    _core.xyz_from_srgb__y,
    _core.xyz_from_srgb__z,
)
zigzag_buttonhole = _functions.ZigzagButtonhole(
    _core.zigzag_buttonhole__length,
    _core.zigzag_buttonhole__width,
    _core.zigzag_buttonhole__stitches,
)
zip_length = _functions.ZipLength(
    _core.zip_length__needed,
    _core.zip_length__buy,
    _core.zip_length__shorten,
    _core.zip_length__top_stop,
    _core.zip_length__bottom_stop,
)
zip_opening = _core.zip_opening

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
