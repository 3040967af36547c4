# Written by `cargo xtask generate` from the doc comments of the core; do not edit.
import numpy as np

arc_from_rise_radius: np.ufunc
arc_from_rise_length: np.ufunc
arc_from_rise_angle_deg: np.ufunc
assistant_volume_stock_ml: np.ufunc
assistant_volume_amount_g: np.ufunc
assistant_volume_doubts: np.ufunc
assistant_volume_cautions: np.ufunc
available_chlorine_available_pct: np.ufunc
available_chlorine_trade_pct: np.ufunc
available_chlorine_cautions: np.ufunc
bath_volume_volume_ml: np.ufunc
bath_volume_doubts: np.ufunc
bath_volume_cautions: np.ufunc
bias_along_selvedge: np.ufunc
bias_square: np.ufunc
bias_strip_length: np.ufunc
bias_strips_strips: np.ufunc
bias_strips_longest: np.ufunc
bias_strips_joined: np.ufunc
bias_strips_kept_pct: np.ufunc
bias_tube_turns: np.ufunc
bias_tube_length: np.ufunc
bias_tube_leftover: np.ufunc
binder_solids_bath_low_pct: np.ufunc
binder_solids_bath_high_pct: np.ufunc
binder_solids_owf_low_pct: np.ufunc
binder_solids_owf_high_pct: np.ufunc
binder_solids_cautions: np.ufunc
binding_strips_count: np.ufunc
binding_strips_spare: np.ufunc
binding_width: np.ufunc
bleach_dilution_bleach_ml: np.ufunc
bleach_dilution_water_ml: np.ufunc
bleach_dilution_parts_water: np.ufunc
bleach_dilution_cautions: np.ufunc
body_length_doubts: np.ufunc
box_pleats_flat: np.ufunc
box_pleats_finished: np.ufunc
box_pleats_count: np.ufunc
box_pleats_show: np.ufunc
box_pleats_depth: np.ufunc
box_pleats_intake: np.ufunc
box_pleats_taken_up: np.ufunc
box_pleats_ratio: np.ufunc
box_pleats_doubts: np.ufunc
box_pleats_count_flat: np.ufunc
box_pleats_count_finished: np.ufunc
box_pleats_count_count: np.ufunc
box_pleats_count_show: np.ufunc
box_pleats_count_depth: np.ufunc
box_pleats_count_intake: np.ufunc
box_pleats_count_taken_up: np.ufunc
box_pleats_count_ratio: np.ufunc
box_pleats_count_doubts: np.ufunc
box_pleats_depth_flat: np.ufunc
box_pleats_depth_finished: np.ufunc
box_pleats_depth_count: np.ufunc
box_pleats_depth_show: np.ufunc
box_pleats_depth_depth: np.ufunc
box_pleats_depth_intake: np.ufunc
box_pleats_depth_taken_up: np.ufunc
box_pleats_depth_ratio: np.ufunc
box_pleats_depth_doubts: np.ufunc
box_pleats_finished_flat: np.ufunc
box_pleats_finished_finished: np.ufunc
box_pleats_finished_count: np.ufunc
box_pleats_finished_show: np.ufunc
box_pleats_finished_depth: np.ufunc
box_pleats_finished_intake: np.ufunc
box_pleats_finished_taken_up: np.ufunc
box_pleats_finished_ratio: np.ufunc
box_pleats_finished_doubts: np.ufunc
breadths_count: np.ufunc
breadths_round: np.ufunc
breadths_spare: np.ufunc
button_diameter: np.ufunc
button_for_hole_diameter: np.ufunc
button_for_hole_creep: np.ufunc
button_loop_visible: np.ufunc
button_loop_cut: np.ufunc
button_loop_cautions: np.ufunc
buttonhole: np.ufunc
cap_ease_ease: np.ufunc
cap_ease_ease_pct: np.ufunc
cap_for_ease: np.ufunc
cap_width_bound: np.ufunc
carried_liquor: np.ufunc
casing_depth: np.ufunc
casing_allowance: np.ufunc
ciede2000: np.ufunc
circle_skirt_waist_radius: np.ufunc
circle_skirt_hem_radius: np.ufunc
circle_skirt_hem_length: np.ufunc
circle_skirt_fraction_fraction: np.ufunc
circle_skirt_fraction_length: np.ufunc
circle_skirt_fraction_waist_radius: np.ufunc
circle_skirt_fraction_hem_radius: np.ufunc
circle_skirt_fraction_hem_length: np.ufunc
circle_skirt_fraction_piece_angle_deg: np.ufunc
circle_skirt_fraction_cloth_length: np.ufunc
circle_skirt_longest_fraction: np.ufunc
circle_skirt_longest_length: np.ufunc
circle_skirt_longest_waist_radius: np.ufunc
circle_skirt_longest_hem_radius: np.ufunc
circle_skirt_longest_hem_length: np.ufunc
circle_skirt_longest_piece_angle_deg: np.ufunc
circle_skirt_longest_cloth_length: np.ufunc
cloth_mass: np.ufunc
cloth_to_buy: np.ufunc
component_check_bears: np.ufunc
component_check_colour: np.ufunc
component_check_cautions: np.ufunc
cover_mark_now: np.ufunc
cover_mark_depth: np.ufunc
cover_mark_ground_after: np.ufunc
cover_mark_mark_after: np.ufunc
cover_mark_after: np.ufunc
cut_for_change_cut: np.ufunc
cut_for_change_added: np.ufunc
cut_for_change_doubts: np.ufunc
cut_state_finished: np.ufunc
cut_state_cut: np.ufunc
dart_leg: np.ufunc
dart_angle_deg: np.ufunc
dart_equivalent_ease_pct: np.ufunc
dart_equivalent_gather_ratio: np.ufunc
dart_equivalent_tuck_depth: np.ufunc
dart_equivalent_doubts: np.ufunc
dart_from_gape_intake: np.ufunc
dart_from_gape_angle_deg: np.ufunc
dart_in_panel_intake_each: np.ufunc
dart_in_panel_leftover: np.ufunc
dart_in_panel_leg: np.ufunc
dart_in_panel_kink_deg: np.ufunc
dart_in_panel_doubts: np.ufunc
dart_turned: np.ufunc
dart_width_at: np.ufunc
deepest_hem: np.ufunc
dimensional_change: np.ufunc
double_dart_upper_leg: np.ufunc
double_dart_lower_leg: np.ufunc
double_dart_upper_angle_deg: np.ufunc
double_dart_lower_angle_deg: np.ufunc
double_dart_bend_deg: np.ufunc
double_dart_doubts: np.ufunc
elastic_round: np.ufunc
elastic_cut: np.ufunc
elastic_worn_pct: np.ufunc
elastic_passing_pct: np.ufunc
elastic_cautions: np.ufunc
even_spacing: np.ufunc
five_gores_front_waist: np.ufunc
five_gores_side_waist: np.ufunc
five_gores_back_waist: np.ufunc
five_gores_front_hip: np.ufunc
five_gores_side_hip: np.ufunc
five_gores_back_hip: np.ufunc
flounce_inner_radius: np.ufunc
flounce_outer_radius: np.ufunc
flounce_hem: np.ufunc
flounce_ratio: np.ufunc
flounce_square: np.ufunc
front_back_doubts: np.ufunc
frustum_slant: np.ufunc
frustum_inner_radius: np.ufunc
frustum_outer_radius: np.ufunc
frustum_angle_deg: np.ufunc
frustum_area_mm2: np.ufunc
gather_ratio_flat: np.ufunc
gather_ratio_taken_up: np.ufunc
gather_ratio_ratio: np.ufunc
gather_ratio_doubts: np.ufunc
gathers_flat: np.ufunc
gathers_taken_up: np.ufunc
gathers_ratio: np.ufunc
gathers_doubts: np.ufunc
girth_doubts: np.ufunc
godet_angle_deg: np.ufunc
godet_chord: np.ufunc
godet_sagitta: np.ufunc
godet_added: np.ufunc
gore_waist_width: np.ufunc
gore_hip_width: np.ufunc
gore_hem_width: np.ufunc
gore_side_length: np.ufunc
gore_flare_deg: np.ufunc
gore_hem_rise: np.ufunc
gsm_from_ounces: np.ufunc
head_opening_least_slit: np.ufunc
head_opening_spare: np.ufunc
hem_on_curve_excess_pct: np.ufunc
hem_on_curve_excess: np.ufunc
hem_on_curve_raw_edge: np.ufunc
hip_waist_drop_drop: np.ufunc
hip_waist_drop_doubts: np.ufunc
holes_left_count: np.ufunc
holes_left_last: np.ufunc
holes_left_to_end: np.ufunc
holes_left_doubts: np.ufunc
k_over_s: np.ufunc
knife_pleats_flat: np.ufunc
knife_pleats_finished: np.ufunc
knife_pleats_count: np.ufunc
knife_pleats_show: np.ufunc
knife_pleats_depth: np.ufunc
knife_pleats_intake: np.ufunc
knife_pleats_taken_up: np.ufunc
knife_pleats_ratio: np.ufunc
knife_pleats_doubts: np.ufunc
knife_pleats_count_flat: np.ufunc
knife_pleats_count_finished: np.ufunc
knife_pleats_count_count: np.ufunc
knife_pleats_count_show: np.ufunc
knife_pleats_count_depth: np.ufunc
knife_pleats_count_intake: np.ufunc
knife_pleats_count_taken_up: np.ufunc
knife_pleats_count_ratio: np.ufunc
knife_pleats_count_doubts: np.ufunc
knife_pleats_depth_flat: np.ufunc
knife_pleats_depth_finished: np.ufunc
knife_pleats_depth_count: np.ufunc
knife_pleats_depth_show: np.ufunc
knife_pleats_depth_depth: np.ufunc
knife_pleats_depth_intake: np.ufunc
knife_pleats_depth_taken_up: np.ufunc
knife_pleats_depth_ratio: np.ufunc
knife_pleats_depth_doubts: np.ufunc
knife_pleats_finished_flat: np.ufunc
knife_pleats_finished_finished: np.ufunc
knife_pleats_finished_count: np.ufunc
knife_pleats_finished_show: np.ufunc
knife_pleats_finished_depth: np.ufunc
knife_pleats_finished_intake: np.ufunc
knife_pleats_finished_taken_up: np.ufunc
knife_pleats_finished_ratio: np.ufunc
knife_pleats_finished_doubts: np.ufunc
lab_from_srgb_l: np.ufunc
lab_from_srgb_a: np.ufunc
lab_from_srgb_b: np.ufunc
lab_from_xyz_l: np.ufunc
lab_from_xyz_a: np.ufunc
lab_from_xyz_b: np.ufunc
lacing: np.ufunc
let_out_lacking: np.ufunc
let_out_each: np.ufunc
let_out_gained: np.ufunc
let_out_short_by: np.ufunc
level_line_radius: np.ufunc
level_line_chord: np.ufunc
level_line_sag: np.ufunc
level_line_length: np.ufunc
linear_light: np.ufunc
lining_free_length: np.ufunc
lining_length_seam_to_seam: np.ufunc
lining_length_straight: np.ufunc
lining_length_spare: np.ufunc
lining_length_fold: np.ufunc
lining_width: np.ufunc
loop_slack_slack: np.ufunc
loop_slack_doubts: np.ufunc
neck_bust_doubts: np.ufunc
negative_ease_girth: np.ufunc
negative_ease_ease: np.ufunc
negative_ease_furthest: np.ufunc
neutraliser_chlorine_g: np.ufunc
neutraliser_amount_g: np.ufunc
neutraliser_ratio: np.ufunc
neutraliser_cautions: np.ufunc
off_centre_opening_narrow_to_line: np.ufunc
off_centre_opening_wide_to_line: np.ufunc
off_centre_opening_narrow_cut: np.ufunc
off_centre_opening_wide_cut: np.ufunc
off_centre_opening_largest_shift: np.ufunc
off_centre_opening_dart_to_narrow: np.ufunc
off_centre_opening_dart_to_wide: np.ufunc
off_centre_opening_doubts: np.ufunc
overdye_pale: np.ufunc
overdye_deep: np.ufunc
overdye_pale_l: np.ufunc
overdye_deep_l: np.ufunc
owf_amount_g: np.ufunc
owf_doubts: np.ufunc
owf_cautions: np.ufunc
piping_width: np.ufunc
plant_dyestuff_low_g: np.ufunc
plant_dyestuff_high_g: np.ufunc
plant_dyestuff_doubts: np.ufunc
plant_dyestuff_cautions: np.ufunc
puff_spread_flat: np.ufunc
puff_spread_added: np.ufunc
puff_spread_spread_each: np.ufunc
puff_spread_strip_ratio: np.ufunc
puff_spread_doubts: np.ufunc
reflectance: np.ufunc
relative_strength: np.ufunc
remaining_width: np.ufunc
repeats_repeats: np.ufunc
repeats_each: np.ufunc
repeats_total: np.ufunc
repeats_waste: np.ufunc
ribbing_round: np.ufunc
ribbing_cut_length: np.ufunc
ribbing_cut_width: np.ufunc
ribbing_stretch_pct: np.ufunc
rinses_rinses_low: np.ufunc
rinses_rinses_high: np.ufunc
rinses_left: np.ufunc
rinses_water_ml: np.ufunc
rinses_cautions: np.ufunc
round_to: np.ufunc
ruffle_flat: np.ufunc
ruffle_cut_width: np.ufunc
ruffle_strips: np.ufunc
ruffle_cloth_length: np.ufunc
ruffle_doubts: np.ufunc
screen_level: np.ufunc
seam_pleat_first_edge: np.ufunc
seam_pleat_next_edge: np.ufunc
seam_pleat_intake: np.ufunc
shaped_band_inner_radius: np.ufunc
shaped_band_outer_radius: np.ufunc
shaped_band_angle_deg: np.ufunc
shaped_band_sagitta: np.ufunc
shaped_band_area_mm2: np.ufunc
share: np.ufunc
shirring_flat: np.ufunc
shirring_ratio: np.ufunc
shirring_rows: np.ufunc
shirring_stitching: np.ufunc
shirring_cautions: np.ufunc
shrink_pair_shell_after: np.ufunc
shrink_pair_lining_after: np.ufunc
shrink_pair_below: np.ufunc
shrink_pair_shell_cut: np.ufunc
shrink_pair_lining_cut: np.ufunc
shrink_pair_doubts: np.ufunc
size_step_step: np.ufunc
size_step_each_edge: np.ufunc
skew: np.ufunc
skew_diagonals: np.ufunc
snip_spacing_spacing: np.ufunc
snip_spacing_flat: np.ufunc
spacing_by_pitch_count: np.ufunc
spacing_by_pitch_pitch: np.ufunc
srgb_from_lab_red: np.ufunc
srgb_from_lab_green: np.ufunc
srgb_from_lab_blue: np.ufunc
srgb_from_lab_outside: np.ufunc
srgb_from_xyz_red: np.ufunc
srgb_from_xyz_green: np.ufunc
srgb_from_xyz_blue: np.ufunc
srgb_from_xyz_outside: np.ufunc
stitch_length: np.ufunc
stock_volume_stock_ml: np.ufunc
stock_volume_amount_g: np.ufunc
stock_volume_doubts: np.ufunc
stock_volume_cautions: np.ufunc
straight_band_cut_length: np.ufunc
straight_band_cut_width: np.ufunc
straight_band_strips: np.ufunc
straight_band_depth: np.ufunc
stretch_pct: np.ufunc
take_in_excess: np.ufunc
take_in_each: np.ufunc
take_in_taken: np.ufunc
take_in_leftover: np.ufunc
tex_from_cotton_count: np.ufunc
tex_from_denier: np.ufunc
tex_from_metric_count: np.ufunc
thread_for_seam: np.ufunc
thread_ratio: np.ufunc
tolerance_stack_worst: np.ufunc
tolerance_stack_likely: np.ufunc
trilaterate_along: np.ufunc
trilaterate_across: np.ufunc
trilaterate_along_per_mm: np.ufunc
trilaterate_across_per_mm: np.ufunc
trilaterate_doubts: np.ufunc
tucks_flat: np.ufunc
tucks_taken_up: np.ufunc
tucks_fold_pitch: np.ufunc
tucks_gap: np.ufunc
tucks_margin: np.ufunc
tucks_doubts: np.ufunc
turn_through_diameter: np.ufunc
turn_through_least_opening: np.ufunc
turn_through_spare: np.ufunc
turned_hem_allowance: np.ufunc
turned_hem_cut_length: np.ufunc
v_neck_edge: np.ufunc
v_neck_off_grain_deg: np.ufunc
v_neck_stay: np.ufunc
waist_hip_doubts: np.ufunc
washes_after: np.ufunc
washes_change_pct: np.ufunc
washes_doubts: np.ufunc
width_conversion_by_area: np.ufunc
width_conversion_low: np.ufunc
width_conversion_high: np.ufunc
wrap_skirt_back_waist: np.ufunc
wrap_skirt_back_hip: np.ufunc
wrap_skirt_front_waist: np.ufunc
wrap_skirt_front_hip: np.ufunc
wrap_skirt_waist_edge: np.ufunc
wrap_skirt_wrap_pct: np.ufunc
xyz_from_lab_x: np.ufunc
xyz_from_lab_y: np.ufunc
xyz_from_lab_z: np.ufunc
xyz_from_srgb_x: np.ufunc
xyz_from_srgb_y: np.ufunc
xyz_from_srgb_z: np.ufunc
zigzag_buttonhole_length: np.ufunc
zigzag_buttonhole_width: np.ufunc
zigzag_buttonhole_stitches: np.ufunc

__all__ = [
    "arc_from_rise_radius",
    "arc_from_rise_length",
    "arc_from_rise_angle_deg",
    "assistant_volume_stock_ml",
    "assistant_volume_amount_g",
    "assistant_volume_doubts",
    "assistant_volume_cautions",
    "available_chlorine_available_pct",
    "available_chlorine_trade_pct",
    "available_chlorine_cautions",
    "bath_volume_volume_ml",
    "bath_volume_doubts",
    "bath_volume_cautions",
    "bias_along_selvedge",
    "bias_square",
    "bias_strip_length",
    "bias_strips_strips",
    "bias_strips_longest",
    "bias_strips_joined",
    "bias_strips_kept_pct",
    "bias_tube_turns",
    "bias_tube_length",
    "bias_tube_leftover",
    "binder_solids_bath_low_pct",
    "binder_solids_bath_high_pct",
    "binder_solids_owf_low_pct",
    "binder_solids_owf_high_pct",
    "binder_solids_cautions",
    "binding_strips_count",
    "binding_strips_spare",
    "binding_width",
    "bleach_dilution_bleach_ml",
    "bleach_dilution_water_ml",
    "bleach_dilution_parts_water",
    "bleach_dilution_cautions",
    "body_length_doubts",
    "box_pleats_flat",
    "box_pleats_finished",
    "box_pleats_count",
    "box_pleats_show",
    "box_pleats_depth",
    "box_pleats_intake",
    "box_pleats_taken_up",
    "box_pleats_ratio",
    "box_pleats_doubts",
    "box_pleats_count_flat",
    "box_pleats_count_finished",
    "box_pleats_count_count",
    "box_pleats_count_show",
    "box_pleats_count_depth",
    "box_pleats_count_intake",
    "box_pleats_count_taken_up",
    "box_pleats_count_ratio",
    "box_pleats_count_doubts",
    "box_pleats_depth_flat",
    "box_pleats_depth_finished",
    "box_pleats_depth_count",
    "box_pleats_depth_show",
    "box_pleats_depth_depth",
    "box_pleats_depth_intake",
    "box_pleats_depth_taken_up",
    "box_pleats_depth_ratio",
    "box_pleats_depth_doubts",
    "box_pleats_finished_flat",
    "box_pleats_finished_finished",
    "box_pleats_finished_count",
    "box_pleats_finished_show",
    "box_pleats_finished_depth",
    "box_pleats_finished_intake",
    "box_pleats_finished_taken_up",
    "box_pleats_finished_ratio",
    "box_pleats_finished_doubts",
    "breadths_count",
    "breadths_round",
    "breadths_spare",
    "button_diameter",
    "button_for_hole_diameter",
    "button_for_hole_creep",
    "button_loop_visible",
    "button_loop_cut",
    "button_loop_cautions",
    "buttonhole",
    "cap_ease_ease",
    "cap_ease_ease_pct",
    "cap_for_ease",
    "cap_width_bound",
    "carried_liquor",
    "casing_depth",
    "casing_allowance",
    "ciede2000",
    "circle_skirt_waist_radius",
    "circle_skirt_hem_radius",
    "circle_skirt_hem_length",
    "circle_skirt_fraction_fraction",
    "circle_skirt_fraction_length",
    "circle_skirt_fraction_waist_radius",
    "circle_skirt_fraction_hem_radius",
    "circle_skirt_fraction_hem_length",
    "circle_skirt_fraction_piece_angle_deg",
    "circle_skirt_fraction_cloth_length",
    "circle_skirt_longest_fraction",
    "circle_skirt_longest_length",
    "circle_skirt_longest_waist_radius",
    "circle_skirt_longest_hem_radius",
    "circle_skirt_longest_hem_length",
    "circle_skirt_longest_piece_angle_deg",
    "circle_skirt_longest_cloth_length",
    "cloth_mass",
    "cloth_to_buy",
    "component_check_bears",
    "component_check_colour",
    "component_check_cautions",
    "cover_mark_now",
    "cover_mark_depth",
    "cover_mark_ground_after",
    "cover_mark_mark_after",
    "cover_mark_after",
    "cut_for_change_cut",
    "cut_for_change_added",
    "cut_for_change_doubts",
    "cut_state_finished",
    "cut_state_cut",
    "dart_leg",
    "dart_angle_deg",
    "dart_equivalent_ease_pct",
    "dart_equivalent_gather_ratio",
    "dart_equivalent_tuck_depth",
    "dart_equivalent_doubts",
    "dart_from_gape_intake",
    "dart_from_gape_angle_deg",
    "dart_in_panel_intake_each",
    "dart_in_panel_leftover",
    "dart_in_panel_leg",
    "dart_in_panel_kink_deg",
    "dart_in_panel_doubts",
    "dart_turned",
    "dart_width_at",
    "deepest_hem",
    "dimensional_change",
    "double_dart_upper_leg",
    "double_dart_lower_leg",
    "double_dart_upper_angle_deg",
    "double_dart_lower_angle_deg",
    "double_dart_bend_deg",
    "double_dart_doubts",
    "elastic_round",
    "elastic_cut",
    "elastic_worn_pct",
    "elastic_passing_pct",
    "elastic_cautions",
    "even_spacing",
    "five_gores_front_waist",
    "five_gores_side_waist",
    "five_gores_back_waist",
    "five_gores_front_hip",
    "five_gores_side_hip",
    "five_gores_back_hip",
    "flounce_inner_radius",
    "flounce_outer_radius",
    "flounce_hem",
    "flounce_ratio",
    "flounce_square",
    "front_back_doubts",
    "frustum_slant",
    "frustum_inner_radius",
    "frustum_outer_radius",
    "frustum_angle_deg",
    "frustum_area_mm2",
    "gather_ratio_flat",
    "gather_ratio_taken_up",
    "gather_ratio_ratio",
    "gather_ratio_doubts",
    "gathers_flat",
    "gathers_taken_up",
    "gathers_ratio",
    "gathers_doubts",
    "girth_doubts",
    "godet_angle_deg",
    "godet_chord",
    "godet_sagitta",
    "godet_added",
    "gore_waist_width",
    "gore_hip_width",
    "gore_hem_width",
    "gore_side_length",
    "gore_flare_deg",
    "gore_hem_rise",
    "gsm_from_ounces",
    "head_opening_least_slit",
    "head_opening_spare",
    "hem_on_curve_excess_pct",
    "hem_on_curve_excess",
    "hem_on_curve_raw_edge",
    "hip_waist_drop_drop",
    "hip_waist_drop_doubts",
    "holes_left_count",
    "holes_left_last",
    "holes_left_to_end",
    "holes_left_doubts",
    "k_over_s",
    "knife_pleats_flat",
    "knife_pleats_finished",
    "knife_pleats_count",
    "knife_pleats_show",
    "knife_pleats_depth",
    "knife_pleats_intake",
    "knife_pleats_taken_up",
    "knife_pleats_ratio",
    "knife_pleats_doubts",
    "knife_pleats_count_flat",
    "knife_pleats_count_finished",
    "knife_pleats_count_count",
    "knife_pleats_count_show",
    "knife_pleats_count_depth",
    "knife_pleats_count_intake",
    "knife_pleats_count_taken_up",
    "knife_pleats_count_ratio",
    "knife_pleats_count_doubts",
    "knife_pleats_depth_flat",
    "knife_pleats_depth_finished",
    "knife_pleats_depth_count",
    "knife_pleats_depth_show",
    "knife_pleats_depth_depth",
    "knife_pleats_depth_intake",
    "knife_pleats_depth_taken_up",
    "knife_pleats_depth_ratio",
    "knife_pleats_depth_doubts",
    "knife_pleats_finished_flat",
    "knife_pleats_finished_finished",
    "knife_pleats_finished_count",
    "knife_pleats_finished_show",
    "knife_pleats_finished_depth",
    "knife_pleats_finished_intake",
    "knife_pleats_finished_taken_up",
    "knife_pleats_finished_ratio",
    "knife_pleats_finished_doubts",
    "lab_from_srgb_l",
    "lab_from_srgb_a",
    "lab_from_srgb_b",
    "lab_from_xyz_l",
    "lab_from_xyz_a",
    "lab_from_xyz_b",
    "lacing",
    "let_out_lacking",
    "let_out_each",
    "let_out_gained",
    "let_out_short_by",
    "level_line_radius",
    "level_line_chord",
    "level_line_sag",
    "level_line_length",
    "linear_light",
    "lining_free_length",
    "lining_length_seam_to_seam",
    "lining_length_straight",
    "lining_length_spare",
    "lining_length_fold",
    "lining_width",
    "loop_slack_slack",
    "loop_slack_doubts",
    "neck_bust_doubts",
    "negative_ease_girth",
    "negative_ease_ease",
    "negative_ease_furthest",
    "neutraliser_chlorine_g",
    "neutraliser_amount_g",
    "neutraliser_ratio",
    "neutraliser_cautions",
    "off_centre_opening_narrow_to_line",
    "off_centre_opening_wide_to_line",
    "off_centre_opening_narrow_cut",
    "off_centre_opening_wide_cut",
    "off_centre_opening_largest_shift",
    "off_centre_opening_dart_to_narrow",
    "off_centre_opening_dart_to_wide",
    "off_centre_opening_doubts",
    "overdye_pale",
    "overdye_deep",
    "overdye_pale_l",
    "overdye_deep_l",
    "owf_amount_g",
    "owf_doubts",
    "owf_cautions",
    "piping_width",
    "plant_dyestuff_low_g",
    "plant_dyestuff_high_g",
    "plant_dyestuff_doubts",
    "plant_dyestuff_cautions",
    "puff_spread_flat",
    "puff_spread_added",
    "puff_spread_spread_each",
    "puff_spread_strip_ratio",
    "puff_spread_doubts",
    "reflectance",
    "relative_strength",
    "remaining_width",
    "repeats_repeats",
    "repeats_each",
    "repeats_total",
    "repeats_waste",
    "ribbing_round",
    "ribbing_cut_length",
    "ribbing_cut_width",
    "ribbing_stretch_pct",
    "rinses_rinses_low",
    "rinses_rinses_high",
    "rinses_left",
    "rinses_water_ml",
    "rinses_cautions",
    "round_to",
    "ruffle_flat",
    "ruffle_cut_width",
    "ruffle_strips",
    "ruffle_cloth_length",
    "ruffle_doubts",
    "screen_level",
    "seam_pleat_first_edge",
    "seam_pleat_next_edge",
    "seam_pleat_intake",
    "shaped_band_inner_radius",
    "shaped_band_outer_radius",
    "shaped_band_angle_deg",
    "shaped_band_sagitta",
    "shaped_band_area_mm2",
    "share",
    "shirring_flat",
    "shirring_ratio",
    "shirring_rows",
    "shirring_stitching",
    "shirring_cautions",
    "shrink_pair_shell_after",
    "shrink_pair_lining_after",
    "shrink_pair_below",
    "shrink_pair_shell_cut",
    "shrink_pair_lining_cut",
    "shrink_pair_doubts",
    "size_step_step",
    "size_step_each_edge",
    "skew",
    "skew_diagonals",
    "snip_spacing_spacing",
    "snip_spacing_flat",
    "spacing_by_pitch_count",
    "spacing_by_pitch_pitch",
    "srgb_from_lab_red",
    "srgb_from_lab_green",
    "srgb_from_lab_blue",
    "srgb_from_lab_outside",
    "srgb_from_xyz_red",
    "srgb_from_xyz_green",
    "srgb_from_xyz_blue",
    "srgb_from_xyz_outside",
    "stitch_length",
    "stock_volume_stock_ml",
    "stock_volume_amount_g",
    "stock_volume_doubts",
    "stock_volume_cautions",
    "straight_band_cut_length",
    "straight_band_cut_width",
    "straight_band_strips",
    "straight_band_depth",
    "stretch_pct",
    "take_in_excess",
    "take_in_each",
    "take_in_taken",
    "take_in_leftover",
    "tex_from_cotton_count",
    "tex_from_denier",
    "tex_from_metric_count",
    "thread_for_seam",
    "thread_ratio",
    "tolerance_stack_worst",
    "tolerance_stack_likely",
    "trilaterate_along",
    "trilaterate_across",
    "trilaterate_along_per_mm",
    "trilaterate_across_per_mm",
    "trilaterate_doubts",
    "tucks_flat",
    "tucks_taken_up",
    "tucks_fold_pitch",
    "tucks_gap",
    "tucks_margin",
    "tucks_doubts",
    "turn_through_diameter",
    "turn_through_least_opening",
    "turn_through_spare",
    "turned_hem_allowance",
    "turned_hem_cut_length",
    "v_neck_edge",
    "v_neck_off_grain_deg",
    "v_neck_stay",
    "waist_hip_doubts",
    "washes_after",
    "washes_change_pct",
    "washes_doubts",
    "width_conversion_by_area",
    "width_conversion_low",
    "width_conversion_high",
    "wrap_skirt_back_waist",
    "wrap_skirt_back_hip",
    "wrap_skirt_front_waist",
    "wrap_skirt_front_hip",
    "wrap_skirt_waist_edge",
    "wrap_skirt_wrap_pct",
    "xyz_from_lab_x",
    "xyz_from_lab_y",
    "xyz_from_lab_z",
    "xyz_from_srgb_x",
    "xyz_from_srgb_y",
    "xyz_from_srgb_z",
    "zigzag_buttonhole_length",
    "zigzag_buttonhole_width",
    "zigzag_buttonhole_stitches",
]
