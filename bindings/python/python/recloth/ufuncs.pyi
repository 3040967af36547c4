# Written by `cargo xtask generate` from the doc comments of the core; do not edit.
import numpy as np

bath_volume_volume_ml: np.ufunc
bath_volume_doubts: np.ufunc
bath_volume_cautions: np.ufunc
bias_along_selvedge: np.ufunc
bias_square: np.ufunc
bias_strip_length: np.ufunc
binding_strips_count: np.ufunc
binding_strips_spare: np.ufunc
binding_width: np.ufunc
body_length_doubts: np.ufunc
button_diameter: np.ufunc
button_for_hole_diameter: np.ufunc
button_for_hole_creep: np.ufunc
button_loop_visible: np.ufunc
button_loop_cut: np.ufunc
button_loop_cautions: np.ufunc
buttonhole: np.ufunc
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
cut_for_change_cut: np.ufunc
cut_for_change_added: np.ufunc
cut_for_change_doubts: np.ufunc
dart_leg: np.ufunc
dart_angle_deg: np.ufunc
dart_in_panel_intake_each: np.ufunc
dart_in_panel_leftover: np.ufunc
dart_in_panel_leg: np.ufunc
dart_in_panel_kink_deg: np.ufunc
dart_in_panel_doubts: np.ufunc
dart_turned: np.ufunc
dimensional_change: np.ufunc
even_spacing: np.ufunc
front_back_doubts: np.ufunc
gather_ratio_flat: np.ufunc
gather_ratio_taken_up: np.ufunc
gather_ratio_ratio: np.ufunc
gather_ratio_doubts: np.ufunc
gathers_flat: np.ufunc
gathers_taken_up: np.ufunc
gathers_ratio: np.ufunc
gathers_doubts: np.ufunc
girth_doubts: np.ufunc
holes_left_count: np.ufunc
holes_left_last: np.ufunc
holes_left_to_end: np.ufunc
holes_left_doubts: np.ufunc
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
lining_free_length: np.ufunc
lining_length_seam_to_seam: np.ufunc
lining_length_straight: np.ufunc
lining_length_spare: np.ufunc
lining_length_fold: np.ufunc
loop_slack_slack: np.ufunc
loop_slack_doubts: np.ufunc
neck_bust_doubts: np.ufunc
off_centre_opening_narrow_to_line: np.ufunc
off_centre_opening_wide_to_line: np.ufunc
off_centre_opening_narrow_cut: np.ufunc
off_centre_opening_wide_cut: np.ufunc
off_centre_opening_largest_shift: np.ufunc
off_centre_opening_dart_to_narrow: np.ufunc
off_centre_opening_dart_to_wide: np.ufunc
off_centre_opening_doubts: np.ufunc
owf_amount_g: np.ufunc
owf_doubts: np.ufunc
owf_cautions: np.ufunc
remaining_width: np.ufunc
round_to: np.ufunc
shaped_band_inner_radius: np.ufunc
shaped_band_outer_radius: np.ufunc
shaped_band_angle_deg: np.ufunc
shaped_band_sagitta: np.ufunc
shaped_band_area_mm2: np.ufunc
share: np.ufunc
shrink_pair_shell_after: np.ufunc
shrink_pair_lining_after: np.ufunc
shrink_pair_below: np.ufunc
shrink_pair_shell_cut: np.ufunc
shrink_pair_lining_cut: np.ufunc
shrink_pair_doubts: np.ufunc
straight_band_cut_length: np.ufunc
straight_band_cut_width: np.ufunc
straight_band_strips: np.ufunc
straight_band_depth: np.ufunc
tolerance_stack_worst: np.ufunc
tolerance_stack_likely: np.ufunc
trilaterate_along: np.ufunc
trilaterate_across: np.ufunc
trilaterate_along_per_mm: np.ufunc
trilaterate_across_per_mm: np.ufunc
trilaterate_doubts: np.ufunc
waist_hip_doubts: np.ufunc

__all__ = [
    "bath_volume_volume_ml",
    "bath_volume_doubts",
    "bath_volume_cautions",
    "bias_along_selvedge",
    "bias_square",
    "bias_strip_length",
    "binding_strips_count",
    "binding_strips_spare",
    "binding_width",
    "body_length_doubts",
    "button_diameter",
    "button_for_hole_diameter",
    "button_for_hole_creep",
    "button_loop_visible",
    "button_loop_cut",
    "button_loop_cautions",
    "buttonhole",
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
    "cut_for_change_cut",
    "cut_for_change_added",
    "cut_for_change_doubts",
    "dart_leg",
    "dart_angle_deg",
    "dart_in_panel_intake_each",
    "dart_in_panel_leftover",
    "dart_in_panel_leg",
    "dart_in_panel_kink_deg",
    "dart_in_panel_doubts",
    "dart_turned",
    "dimensional_change",
    "even_spacing",
    "front_back_doubts",
    "gather_ratio_flat",
    "gather_ratio_taken_up",
    "gather_ratio_ratio",
    "gather_ratio_doubts",
    "gathers_flat",
    "gathers_taken_up",
    "gathers_ratio",
    "gathers_doubts",
    "girth_doubts",
    "holes_left_count",
    "holes_left_last",
    "holes_left_to_end",
    "holes_left_doubts",
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
    "lining_free_length",
    "lining_length_seam_to_seam",
    "lining_length_straight",
    "lining_length_spare",
    "lining_length_fold",
    "loop_slack_slack",
    "loop_slack_doubts",
    "neck_bust_doubts",
    "off_centre_opening_narrow_to_line",
    "off_centre_opening_wide_to_line",
    "off_centre_opening_narrow_cut",
    "off_centre_opening_wide_cut",
    "off_centre_opening_largest_shift",
    "off_centre_opening_dart_to_narrow",
    "off_centre_opening_dart_to_wide",
    "off_centre_opening_doubts",
    "owf_amount_g",
    "owf_doubts",
    "owf_cautions",
    "remaining_width",
    "round_to",
    "shaped_band_inner_radius",
    "shaped_band_outer_radius",
    "shaped_band_angle_deg",
    "shaped_band_sagitta",
    "shaped_band_area_mm2",
    "share",
    "shrink_pair_shell_after",
    "shrink_pair_lining_after",
    "shrink_pair_below",
    "shrink_pair_shell_cut",
    "shrink_pair_lining_cut",
    "shrink_pair_doubts",
    "straight_band_cut_length",
    "straight_band_cut_width",
    "straight_band_strips",
    "straight_band_depth",
    "tolerance_stack_worst",
    "tolerance_stack_likely",
    "trilaterate_along",
    "trilaterate_across",
    "trilaterate_along_per_mm",
    "trilaterate_across_per_mm",
    "trilaterate_doubts",
    "waist_hip_doubts",
]
