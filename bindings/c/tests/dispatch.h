/* Written by `cargo xtask generate`; do not edit. Calls every function by its name. */

static const char *const band_make_words[] = {"folded", "faced", NULL};
static const char *const basis_words[] = {"fresh", "dry", NULL};
static const char *const bath_words[] = {"water", "chlorine_bleach", "direct", "reactive", "acid", "vat", "sulphur", "azoic", "metal_complex", "disperse", "basic", "natural", NULL};
static const char *const binding_fold_words[] = {"single", "double", NULL};
static const char *const button_shape_words[] = {"flat", "ball", NULL};
static const char *const ease_place_words[] = {"bust", "dress_waist", "skirt_waist", "hip", "shirt_chest", NULL};
static const char *const edge_curve_words[] = {"inward", "outward", NULL};
static const char *const fibre_words[] = {"unknown", "cotton", "linen", "viscose", "polyester", "acrylic", "polyamide", "acetate", "elastane", "rubber", "wool", "silk", "mohair", "leather", NULL};
static const char *const finish_words[] = {"unknown", "plain", "not_fast", "flame_retardant", "resin", NULL};
static const char *const in_bath_words[] = {"unknown", "water_only", "acid", "ammonia", "alcohol", "peroxide", "neutraliser", "other", NULL};
static const char *const insert_place_words[] = {"seam", "slash", NULL};
static const char *const reaction_words[] = {"thiosulfate_to_tetrathionate", "thiosulfate_to_sulfur", "thiosulfate_to_sulfate", "bisulfite", "metabisulfite", "sulfite", "ascorbic_acid", "peroxide", NULL};
static const char *const rounding_words[] = {"nearest", "up", "down", NULL};
static const char *const square_ends_words[] = {"neither", "first", "last", "both", NULL};
static const char *const stage_words[] = {"in_bleach", "drained", "fresh_bath", NULL};
static const char *const stitch_type_words[] = {"chain_single", "lock", "chain_double", NULL};
static const char *const style_words[] = {"exact", "mm", "mm_half", "cm", "cm_comma", "metre", "metre_comma", "inch_half", "inch_quarter", "inch_eighth", "inch_sixteenth", "inch_thirty_second", "inch_mark", "foot_eighth", "yard_eighth", NULL};
static const char *const swatch_words[] = {"untried", "passed", "failed", NULL};

static recloth_status call_arc_from_rise(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_arc_from_rise_t out;
  recloth_status status = recloth_arc_from_rise(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.radius);
  got_number(got, out.length);
  got_number(got, out.angle_deg);
  return status;
}

static recloth_status call_assistant_volume(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_stock_volume_t out;
  recloth_status status = recloth_assistant_volume(in[0].number, in[1].number, in[2].number, in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.stock_ml);
  got_number(got, out.amount_g);
  got_count(got, out.doubts);
  got_count(got, out.cautions);
  return status;
}

static recloth_status call_available_chlorine(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_available_chlorine_t out;
  recloth_status status = recloth_available_chlorine(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.available_pct);
  got_number(got, out.trade_pct);
  got_count(got, out.doubts);
  got_count(got, out.cautions);
  return status;
}

static recloth_status call_batches(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  size_t numbers_count = room_for((double)in[0].count, 0);
  double *numbers = got_list(got, numbers_count);
  recloth_batches_t out;
  recloth_status status = recloth_batches(in[0].numbers, in[0].count, in[1].number, in[2].number, numbers, numbers_count, in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_count(got, out.batches);
  got_count(got, out.least);
  got_number(got, out.capacity_g);
  got_number(got, out.heaviest_g);
  got_count(got, out.doubts);
  got_count(got, out.cautions);
  return status;
}

static recloth_status call_bath_volume(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_bath_volume_t out;
  recloth_status status = recloth_bath_volume(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.volume_ml);
  got_count(got, out.doubts);
  got_count(got, out.cautions);
  return status;
}

static recloth_status call_bias_along_selvedge(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_bias_along_selvedge(in[0].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_bias_square(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_bias_square(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_bias_strip_length(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_bias_strip_length(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_bias_strips(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_bias_strips_t out;
  recloth_status status = recloth_bias_strips(in[0].number, in[1].number, in[2].number, in[3].number, in[4].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_count(got, out.strips);
  got_number(got, out.longest);
  got_number(got, out.joined);
  got_number(got, out.kept_pct);
  return status;
}

static recloth_status call_bias_tube(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_bias_tube_t out;
  recloth_status status = recloth_bias_tube(in[0].number, in[1].number, in[2].number, in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_count(got, out.turns);
  got_number(got, out.length);
  got_number(got, out.leftover);
  return status;
}

static recloth_status call_binder_solids(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_binder_solids_t out;
  recloth_status status = recloth_binder_solids(in[0].number, in[1].number, in[2].number, in[3].number, (uint32_t)in[4].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.bath_low_pct);
  got_number(got, out.bath_high_pct);
  got_number(got, out.owf_low_pct);
  got_number(got, out.owf_high_pct);
  got_count(got, out.doubts);
  got_count(got, out.cautions);
  return status;
}

static recloth_status call_binding_length(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_binding_length(in[0].number, (uint32_t)in[1].number, in[2].number, in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_binding_strips(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_binding_strips_t out;
  recloth_status status = recloth_binding_strips(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_count(got, out.count);
  got_number(got, out.spare);
  return status;
}

static recloth_status call_binding_width(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_binding_width(in[0].number, in[1].number, in[2].number, word(in[3].text, binding_fold_words), &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_bleach_dilution(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_bleach_dilution_t out;
  recloth_status status = recloth_bleach_dilution(in[0].number, in[1].number, in[2].number, in[3].number, word(in[4].text, fibre_words), word(in[5].text, finish_words), word(in[6].text, swatch_words), word(in[7].text, in_bath_words), &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.bleach_ml);
  got_number(got, out.water_ml);
  got_number(got, out.parts_water);
  got_count(got, out.doubts);
  got_count(got, out.cautions);
  return status;
}

static recloth_status call_bleach_time(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_bleach_time_t out;
  recloth_status status = recloth_bleach_time(in[0].numbers, in[0].count, in[1].numbers, in[1].count, in[2].number, in[3].number, word(in[4].text, fibre_words), word(in[5].text, finish_words), word(in[6].text, swatch_words), word(in[7].text, in_bath_words), in[8].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.time_min);
  got_number(got, out.next_swatch_min);
  got_number(got, out.rate);
  got_count(got, out.doubts);
  got_count(got, out.cautions);
  return status;
}

static recloth_status call_body_length_doubts(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  uint64_t out = 0;
  recloth_status status = recloth_body_length_doubts(in[0].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_count(got, out);
  return status;
}

static recloth_status call_box_pleats(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_box_pleats_t out;
  recloth_status status = recloth_box_pleats(in[0].number, (uint32_t)in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.flat);
  got_number(got, out.finished);
  got_count(got, out.count);
  got_number(got, out.show);
  got_number(got, out.depth);
  got_number(got, out.intake);
  got_number(got, out.taken_up);
  got_number(got, out.ratio);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_box_pleats_count(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_box_pleats_t out;
  recloth_status status = recloth_box_pleats_count(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.flat);
  got_number(got, out.finished);
  got_count(got, out.count);
  got_number(got, out.show);
  got_number(got, out.depth);
  got_number(got, out.intake);
  got_number(got, out.taken_up);
  got_number(got, out.ratio);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_box_pleats_depth(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_box_pleats_t out;
  recloth_status status = recloth_box_pleats_depth(in[0].number, in[1].number, (uint32_t)in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.flat);
  got_number(got, out.finished);
  got_count(got, out.count);
  got_number(got, out.show);
  got_number(got, out.depth);
  got_number(got, out.intake);
  got_number(got, out.taken_up);
  got_number(got, out.ratio);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_box_pleats_finished(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_box_pleats_t out;
  recloth_status status = recloth_box_pleats_finished(in[0].number, (uint32_t)in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.flat);
  got_number(got, out.finished);
  got_count(got, out.count);
  got_number(got, out.show);
  got_number(got, out.depth);
  got_number(got, out.intake);
  got_number(got, out.taken_up);
  got_number(got, out.ratio);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_breadths(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_breadths_t out;
  recloth_status status = recloth_breadths(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_count(got, out.count);
  got_number(got, out.round);
  got_number(got, out.spare);
  return status;
}

static recloth_status call_button_diameter(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_button_diameter(in[0].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_button_for_hole(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_button_for_hole_t out;
  recloth_status status = recloth_button_for_hole(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.diameter);
  got_number(got, out.creep);
  return status;
}

static recloth_status call_button_for_stand(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_button_for_stand(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_button_loop(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_button_loop_t out;
  recloth_status status = recloth_button_loop(in[0].number, in[1].number, in[2].number, in[3].number, in[4].number, in[5].number, word(in[6].text, button_shape_words), &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.visible);
  got_number(got, out.cut);
  got_count(got, out.cautions);
  return status;
}

static recloth_status call_button_stand(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_button_stand_t out;
  recloth_status status = recloth_button_stand(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.extension);
  got_number(got, out.past_rim);
  got_number(got, out.overlap);
  return status;
}

static recloth_status call_buttonhole(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_buttonhole(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_cap_ease(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_cap_ease_t out;
  recloth_status status = recloth_cap_ease(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.ease);
  got_number(got, out.ease_pct);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_cap_for_ease(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_cap_for_ease(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_cap_width_bound(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_cap_width_bound(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_carried_liquor(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_carried_liquor_t out;
  recloth_status status = recloth_carried_liquor(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.carried_ml);
  got_count(got, out.doubts);
  got_count(got, out.cautions);
  return status;
}

static recloth_status call_casing(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_casing_t out;
  recloth_status status = recloth_casing(in[0].number, in[1].number, in[2].number, in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.depth);
  got_number(got, out.allowance);
  return status;
}

static recloth_status call_ciede2000(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_ciede2000(in[0].number, in[1].number, in[2].number, in[3].number, in[4].number, in[5].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_circle_skirt(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_circle_skirt_t out;
  recloth_status status = recloth_circle_skirt(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.waist_radius);
  got_number(got, out.hem_radius);
  got_number(got, out.hem_length);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_circle_skirt_fraction(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_circle_skirt_on_cloth_t out;
  recloth_status status = recloth_circle_skirt_fraction(in[0].number, in[1].number, in[2].number, (uint32_t)in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.fraction);
  got_number(got, out.length);
  got_number(got, out.waist_radius);
  got_number(got, out.hem_radius);
  got_number(got, out.hem_length);
  got_number(got, out.piece_angle_deg);
  got_number(got, out.cloth_length);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_circle_skirt_longest(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_circle_skirt_on_cloth_t out;
  recloth_status status = recloth_circle_skirt_longest(in[0].number, in[1].number, in[2].number, (uint32_t)in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.fraction);
  got_number(got, out.length);
  got_number(got, out.waist_radius);
  got_number(got, out.hem_radius);
  got_number(got, out.hem_length);
  got_number(got, out.piece_angle_deg);
  got_number(got, out.cloth_length);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_cloth_mass(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_cloth_mass(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_cloth_to_buy(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_cloth_to_buy(in[0].number, in[1].number, in[2].number, in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_component_check(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_component_check_t out;
  recloth_status status = recloth_component_check(word(in[0].text, fibre_words), word(in[1].text, finish_words), word(in[2].text, swatch_words), word(in[3].text, bath_words), in[4].number, in[5].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_count(got, out.bears);
  got_count(got, out.colour);
  got_count(got, out.doubts);
  got_count(got, out.cautions);
  return status;
}

static recloth_status call_cover_mark(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_cover_mark_t out;
  recloth_status status = recloth_cover_mark(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.now);
  got_number(got, out.depth);
  got_number(got, out.ground_after);
  got_number(got, out.mark_after);
  got_number(got, out.after);
  return status;
}

static recloth_status call_curved_band(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  size_t tops_count = room_for((double)in[0].count, 0);
  double *tops = got_list(got, tops_count);
  recloth_curved_band_t out;
  recloth_status status = recloth_curved_band(in[0].numbers, in[0].count, in[1].number, in[2].number, tops, tops_count, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.inner_radius);
  got_number(got, out.outer_radius);
  got_number(got, out.angle_deg);
  got_number(got, out.sagitta);
  return status;
}

static recloth_status call_curved_binding(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_curved_binding_t out;
  recloth_status status = recloth_curved_binding(in[0].number, in[1].number, in[2].number, word(in[3].text, edge_curve_words), &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.seam);
  got_number(got, out.stretch_pct);
  got_number(got, out.width_pct);
  return status;
}

static recloth_status call_cut_for_change(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_cut_for_change_t out;
  recloth_status status = recloth_cut_for_change(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.cut);
  got_number(got, out.added);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_cut_state(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_cut_state_t out;
  recloth_status status = recloth_cut_state(in[0].number, in[1].number, (uint32_t)in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.finished);
  got_number(got, out.cut);
  return status;
}

static recloth_status call_dart(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_dart_t out;
  recloth_status status = recloth_dart(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.leg);
  got_number(got, out.angle_deg);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_dart_equivalent(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_dart_equivalent_t out;
  recloth_status status = recloth_dart_equivalent(in[0].number, in[1].number, (uint32_t)in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.ease_pct);
  got_number(got, out.gather_ratio);
  got_number(got, out.tuck_depth);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_dart_from_gape(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_dart_from_gape_t out;
  recloth_status status = recloth_dart_from_gape(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.intake);
  got_number(got, out.angle_deg);
  return status;
}

static recloth_status call_dart_in_panel(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_dart_in_panel_t out;
  recloth_status status = recloth_dart_in_panel(in[0].number, in[1].number, (uint32_t)in[2].number, in[3].number, in[4].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.intake_each);
  got_number(got, out.leftover);
  got_number(got, out.leg);
  got_number(got, out.kink_deg);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_dart_turned(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_dart_turned(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_dart_width_at(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_dart_width_at(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_deepest_hem(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_deepest_hem(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_dimensional_change(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_dimensional_change(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_double_dart(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_double_dart_t out;
  recloth_status status = recloth_double_dart(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.upper_leg);
  got_number(got, out.lower_leg);
  got_number(got, out.upper_angle_deg);
  got_number(got, out.lower_angle_deg);
  got_number(got, out.bend_deg);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_elastic(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_elastic_t out;
  recloth_status status = recloth_elastic(in[0].number, in[1].number, in[2].number, in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.round);
  got_number(got, out.cut);
  got_number(got, out.worn_pct);
  got_number(got, out.passing_pct);
  got_count(got, out.doubts);
  got_count(got, out.cautions);
  return status;
}

static recloth_status call_even_spacing(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_even_spacing(in[0].number, in[1].number, (uint32_t)in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_five_gores(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_five_gores_t out;
  recloth_status status = recloth_five_gores(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.front_waist);
  got_number(got, out.side_waist);
  got_number(got, out.back_waist);
  got_number(got, out.front_hip);
  got_number(got, out.side_hip);
  got_number(got, out.back_hip);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_flounce(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_flounce_t out;
  recloth_status status = recloth_flounce(in[0].number, in[1].number, (uint32_t)in[2].number, in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.inner_radius);
  got_number(got, out.outer_radius);
  got_number(got, out.hem);
  got_number(got, out.ratio);
  got_number(got, out.square);
  return status;
}

static recloth_status call_folded_band(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_folded_band_t out;
  recloth_status status = recloth_folded_band(in[0].number, in[1].number, in[2].number, in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.cut_width);
  got_number(got, out.fold_line);
  got_number(got, out.inner);
  return status;
}

static recloth_status call_format_length(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  char out[64] = "";
  recloth_status status = recloth_format_length(in[0].number, word(in[1].text, style_words), out, sizeof out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_text(got, out);
  return status;
}

static recloth_status call_front_back_doubts(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  uint64_t out = 0;
  recloth_status status = recloth_front_back_doubts(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_count(got, out);
  return status;
}

static recloth_status call_frustum(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_frustum_t out;
  recloth_status status = recloth_frustum(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.slant);
  got_number(got, out.inner_radius);
  got_number(got, out.outer_radius);
  got_number(got, out.angle_deg);
  got_number(got, out.area_mm2);
  return status;
}

static recloth_status call_gather_ratio(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_gathers_t out;
  recloth_status status = recloth_gather_ratio(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.flat);
  got_number(got, out.taken_up);
  got_number(got, out.ratio);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_gather_sections(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  size_t flats_count = room_for((double)in[0].count, 0);
  double *flats = got_list(got, flats_count);
  recloth_gather_sections_t out;
  recloth_status status = recloth_gather_sections(in[0].numbers, in[0].count, in[1].number, flats, flats_count, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.finished);
  got_number(got, out.ratio);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_gathers(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_gathers_t out;
  recloth_status status = recloth_gathers(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.flat);
  got_number(got, out.taken_up);
  got_number(got, out.ratio);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_girth_doubts(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  uint64_t out = 0;
  recloth_status status = recloth_girth_doubts(in[0].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_count(got, out);
  return status;
}

static recloth_status call_godet(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_godet_t out;
  recloth_status status = recloth_godet(in[0].number, in[1].number, (uint32_t)in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.angle_deg);
  got_number(got, out.chord);
  got_number(got, out.sagitta);
  got_number(got, out.added);
  return status;
}

static recloth_status call_gore(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_gore_t out;
  recloth_status status = recloth_gore(in[0].number, in[1].number, in[2].number, in[3].number, in[4].number, (uint32_t)in[5].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.waist_width);
  got_number(got, out.hip_width);
  got_number(got, out.hem_width);
  got_number(got, out.side_length);
  got_number(got, out.flare_deg);
  got_number(got, out.hem_rise);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_gsm_from_ounces(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_gsm_from_ounces(in[0].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_gusset(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_gusset_t out;
  recloth_status status = recloth_gusset(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.angle_deg);
  got_number(got, out.long_diagonal);
  got_number(got, out.cut_long);
  got_number(got, out.cut_short);
  return status;
}

static recloth_status call_head_opening(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_head_opening_t out;
  recloth_status status = recloth_head_opening(in[0].number, in[1].number, in[2].number, in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.least_slit);
  got_number(got, out.spare);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_hem_let_down(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_hem_let_down_t out;
  recloth_status status = recloth_hem_let_down(in[0].number, in[1].number, in[2].number, in[3].number, in[4].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.left);
  got_number(got, out.crease);
  got_number(got, out.stitching);
  got_number(got, out.longest);
  got_number(got, out.longest_faced);
  return status;
}

static recloth_status call_hem_on_curve(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_hem_on_curve_t out;
  recloth_status status = recloth_hem_on_curve(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.excess_pct);
  got_number(got, out.excess);
  got_number(got, out.raw_edge);
  return status;
}

static recloth_status call_hip_waist_drop(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_hip_waist_drop_t out;
  recloth_status status = recloth_hip_waist_drop(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.drop);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_holes_left(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_holes_left_t out;
  recloth_status status = recloth_holes_left(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_count(got, out.count);
  got_number(got, out.last);
  got_number(got, out.to_end);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_insert_strip(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_insert_strip_t out;
  recloth_status status = recloth_insert_strip(in[0].number, in[1].number, (uint32_t)in[2].number, word(in[3].text, insert_place_words), &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.finished);
  got_number(got, out.cut_width);
  got_number(got, out.cloth);
  return status;
}

static recloth_status call_k_over_s(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_k_over_s(in[0].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_knife_pleats(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_knife_pleats_t out;
  recloth_status status = recloth_knife_pleats(in[0].number, (uint32_t)in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.flat);
  got_number(got, out.finished);
  got_count(got, out.count);
  got_number(got, out.show);
  got_number(got, out.depth);
  got_number(got, out.intake);
  got_number(got, out.taken_up);
  got_number(got, out.ratio);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_knife_pleats_count(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_knife_pleats_t out;
  recloth_status status = recloth_knife_pleats_count(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.flat);
  got_number(got, out.finished);
  got_count(got, out.count);
  got_number(got, out.show);
  got_number(got, out.depth);
  got_number(got, out.intake);
  got_number(got, out.taken_up);
  got_number(got, out.ratio);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_knife_pleats_depth(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_knife_pleats_t out;
  recloth_status status = recloth_knife_pleats_depth(in[0].number, in[1].number, (uint32_t)in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.flat);
  got_number(got, out.finished);
  got_count(got, out.count);
  got_number(got, out.show);
  got_number(got, out.depth);
  got_number(got, out.intake);
  got_number(got, out.taken_up);
  got_number(got, out.ratio);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_knife_pleats_finished(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_knife_pleats_t out;
  recloth_status status = recloth_knife_pleats_finished(in[0].number, (uint32_t)in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.flat);
  got_number(got, out.finished);
  got_count(got, out.count);
  got_number(got, out.show);
  got_number(got, out.depth);
  got_number(got, out.intake);
  got_number(got, out.taken_up);
  got_number(got, out.ratio);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_lab_from_srgb(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_lab_t out;
  recloth_status status = recloth_lab_from_srgb(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.l);
  got_number(got, out.a);
  got_number(got, out.b);
  return status;
}

static recloth_status call_lab_from_xyz(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_lab_t out;
  recloth_status status = recloth_lab_from_xyz(in[0].number, in[1].number, in[2].number, in[3].number, in[4].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.l);
  got_number(got, out.a);
  got_number(got, out.b);
  return status;
}

static recloth_status call_lacing(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_lacing((uint32_t)in[0].number, in[1].number, in[2].number, in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_length_chain(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_length_chain_t out;
  recloth_status status = recloth_length_chain(in[0].numbers, in[0].count, in[1].numbers, in[1].count, in[2].number, (uint32_t)in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.value);
  got_number(got, out.plus);
  got_number(got, out.minus);
  got_number(got, out.worst_per_mm);
  got_number(got, out.likely_per_mm);
  return status;
}

static recloth_status call_length_chain_shares(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  size_t parts_count = room_for((double)in[0].count, 0);
  double *parts = got_list(got, parts_count);
  size_t misses_count = room_for((double)in[0].count, 0);
  double *misses = got_list(got, misses_count);
  recloth_chain_shares_t out;
  recloth_status status = recloth_length_chain_shares(in[0].numbers, in[0].count, in[1].numbers, in[1].count, in[2].numbers, in[2].count, in[3].number, (uint32_t)in[4].number, parts, parts_count, misses, misses_count, in[5].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.value);
  got_number(got, out.worst);
  got_number(got, out.likely);
  got_count(got, out.largest);
  got_number(got, out.largest_part);
  return status;
}

static recloth_status call_let_out(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_let_out_t out;
  recloth_status status = recloth_let_out(in[0].number, in[1].number, in[2].number, in[3].number, (uint32_t)in[4].number, in[5].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.lacking);
  got_number(got, out.each);
  got_number(got, out.gained);
  got_number(got, out.short_by);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_level_line(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_level_line_t out;
  recloth_status status = recloth_level_line(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.radius);
  got_number(got, out.chord);
  got_number(got, out.sag);
  got_number(got, out.length);
  return status;
}

static recloth_status call_linear_light(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_linear_light(in[0].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_lining_free_length(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_lining_free_length(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_lining_length(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_lining_length_t out;
  recloth_status status = recloth_lining_length(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.seam_to_seam);
  got_number(got, out.straight);
  got_number(got, out.spare);
  got_number(got, out.fold);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_lining_width(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_lining_width(in[0].number, in[1].number, in[2].number, in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_liquor_shares(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  size_t shares_ml_count = room_for((double)in[0].count, 0);
  double *shares_ml = got_list(got, shares_ml_count);
  size_t waters_ml_count = room_for((double)in[0].count, 0);
  double *waters_ml = got_list(got, waters_ml_count);
  recloth_liquor_shares_t out;
  recloth_status status = recloth_liquor_shares(in[0].numbers, in[0].count, in[1].number, in[2].number, shares_ml, shares_ml_count, waters_ml, waters_ml_count, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.bath_ml);
  got_number(got, out.water_ml);
  got_count(got, out.doubts);
  got_count(got, out.cautions);
  return status;
}

static recloth_status call_loop_slack(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_loop_slack_t out;
  recloth_status status = recloth_loop_slack(in[0].number, in[1].number, in[2].number, in[3].number, in[4].number, in[5].number, word(in[6].text, button_shape_words), &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.slack);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_mix_temperature(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_mix_temperature_t out;
  recloth_status status = recloth_mix_temperature(in[0].numbers, in[0].count, in[1].numbers, in[1].count, in[2].number, in[3].number, in[4].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.temperature_c);
  got_number(got, out.volume_ml);
  got_count(got, out.doubts);
  got_count(got, out.cautions);
  return status;
}

static recloth_status call_nap_layout(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_nap_layout_t out;
  recloth_status status = recloth_nap_layout(in[0].number, in[1].number, in[2].number, (uint32_t)in[3].number, in[4].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_count(got, out.across_one_way);
  got_count(got, out.across_turned);
  got_number(got, out.length_one_way);
  got_number(got, out.length_turned);
  got_number(got, out.nap_extra);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_neck_bust_doubts(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  uint64_t out = 0;
  recloth_status status = recloth_neck_bust_doubts(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_count(got, out);
  return status;
}

static recloth_status call_needle_blade(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_needle_blade_t out;
  recloth_status status = recloth_needle_blade((uint32_t)in[0].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.blade);
  got_number(got, out.thread);
  return status;
}

static recloth_status call_needle_metric(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_needle_metric((uint32_t)in[0].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_negative_ease(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_negative_ease_t out;
  recloth_status status = recloth_negative_ease(in[0].number, in[1].number, in[2].number, in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.girth);
  got_number(got, out.ease);
  got_number(got, out.furthest);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_neutraliser(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_neutraliser_t out;
  recloth_status status = recloth_neutraliser(in[0].number, in[1].number, word(in[2].text, reaction_words), word(in[3].text, stage_words), word(in[4].text, in_bath_words), in[5].number, in[6].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.chlorine_g);
  got_number(got, out.amount_g);
  got_number(got, out.ratio);
  got_count(got, out.doubts);
  got_count(got, out.cautions);
  return status;
}

static recloth_status call_off_centre_opening(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_off_centre_opening_t out;
  recloth_status status = recloth_off_centre_opening(in[0].number, in[1].number, in[2].number, in[3].number, in[4].number, in[5].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.narrow_to_line);
  got_number(got, out.wide_to_line);
  got_number(got, out.narrow_cut);
  got_number(got, out.wide_cut);
  got_number(got, out.largest_shift);
  got_number(got, out.dart_to_narrow);
  got_number(got, out.dart_to_wide);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_overdye(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_overdye_t out;
  recloth_status status = recloth_overdye(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.pale);
  got_number(got, out.deep);
  got_number(got, out.pale_l);
  got_number(got, out.deep_l);
  return status;
}

static recloth_status call_owf(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_owf_t out;
  recloth_status status = recloth_owf(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.amount_g);
  got_count(got, out.doubts);
  got_count(got, out.cautions);
  return status;
}

static recloth_status call_panel_by_offsets(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  size_t left_bow_count = room_for((double)in[0].count, 0);
  double *left_bow = got_list(got, left_bow_count);
  size_t right_bow_count = room_for((double)in[0].count, 0);
  double *right_bow = got_list(got, right_bow_count);
  recloth_panel_by_offsets_t out;
  recloth_status status = recloth_panel_by_offsets(in[0].numbers, in[0].count, in[1].numbers, in[1].count, in[2].numbers, in[2].count, left_bow, left_bow_count, right_bow, right_bow_count, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.area);
  got_number(got, out.length);
  got_number(got, out.widest);
  got_number(got, out.narrowest);
  got_number(got, out.largest_bow);
  return status;
}

static recloth_status call_panel_by_triangles(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  size_t along_count = room_for((double)in[1].count, 2);
  double *along = got_list(got, along_count);
  size_t across_count = room_for((double)in[1].count, 2);
  double *across = got_list(got, across_count);
  size_t misfits_count = room_for((double)in[6].count, 0);
  double *misfits = got_list(got, misfits_count);
  recloth_panel_by_triangles_t out;
  recloth_status status = recloth_panel_by_triangles(in[0].number, in[1].counts, in[1].count, in[2].counts, in[2].count, in[3].numbers, in[3].count, in[4].numbers, in[4].count, in[5].counts, in[5].count, in[6].counts, in[6].count, in[7].counts, in[7].count, in[8].numbers, in[8].count, along, along_count, across, across_count, misfits, misfits_count, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.area);
  got_number(got, out.perimeter);
  got_number(got, out.largest_misfit);
  got_count(got, out.weakest_corner);
  got_number(got, out.weakest_per_mm);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_parse_length(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_parse_length(in[0].text, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_photo_map(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  size_t along_count = room_for((double)in[4].count, 0);
  double *along = got_list(got, along_count);
  size_t across_count = room_for((double)in[4].count, 0);
  double *across = got_list(got, across_count);
  size_t scales_count = room_for((double)in[4].count, 0);
  double *scales = got_list(got, scales_count);
  recloth_photo_map_t out;
  recloth_status status = recloth_photo_map(in[0].numbers, in[0].count, in[1].numbers, in[1].count, in[2].numbers, in[2].count, in[3].numbers, in[3].count, in[4].numbers, in[4].count, in[5].numbers, in[5].count, along, along_count, across, across_count, scales, scales_count, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.reach);
  got_number(got, out.coarsest);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_pieced_length(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_pieced_length_t out;
  recloth_status status = recloth_pieced_length(in[0].numbers, in[0].count, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.joined);
  got_number(got, out.spare);
  got_count(got, out.joins);
  got_count(got, out.fewest);
  return status;
}

static recloth_status call_piping_width(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_piping_width(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_plant_dyestuff(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_plant_dyestuff_t out;
  recloth_status status = recloth_plant_dyestuff(in[0].number, in[1].number, in[2].number, word(in[3].text, basis_words), word(in[4].text, basis_words), in[5].number, in[6].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.low_g);
  got_number(got, out.high_g);
  got_count(got, out.doubts);
  got_count(got, out.cautions);
  return status;
}

static recloth_status call_pooled_strength(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_pooled_strength_t out;
  recloth_status status = recloth_pooled_strength(in[0].numbers, in[0].count, in[1].numbers, in[1].count, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.strength_pct);
  got_number(got, out.volume_ml);
  got_count(got, out.cautions);
  return status;
}

static recloth_status call_puff_spread(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_puff_spread_t out;
  recloth_status status = recloth_puff_spread(in[0].number, in[1].number, (uint32_t)in[2].number, in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.flat);
  got_number(got, out.added);
  got_number(got, out.spread_each);
  got_number(got, out.strip_ratio);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_reflectance(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_reflectance(in[0].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_relative_strength(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_relative_strength(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_remaining_width(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_remaining_width(in[0].number, in[1].number, in[2].number, (uint32_t)in[3].number, in[4].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_repeats(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_repeats_t out;
  recloth_status status = recloth_repeats(in[0].number, in[1].number, (uint32_t)in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_count(got, out.repeats);
  got_number(got, out.each);
  got_number(got, out.total);
  got_number(got, out.waste);
  return status;
}

static recloth_status call_ribbing(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_ribbing_t out;
  recloth_status status = recloth_ribbing(in[0].number, in[1].number, in[2].number, in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.round);
  got_number(got, out.cut_length);
  got_number(got, out.cut_width);
  got_number(got, out.stretch_pct);
  return status;
}

static recloth_status call_rinses(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_rinses_t out;
  recloth_status status = recloth_rinses(in[0].number, in[1].number, in[2].number, in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_count(got, out.rinses_low);
  got_count(got, out.rinses_high);
  got_number(got, out.left);
  got_number(got, out.water_ml);
  got_count(got, out.doubts);
  got_count(got, out.cautions);
  return status;
}

static recloth_status call_round_set(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  size_t tapes_count = room_for((double)in[0].count, 0);
  double *tapes = got_list(got, tapes_count);
  recloth_rounded_set_t out;
  recloth_status status = recloth_round_set(in[0].numbers, in[0].count, in[1].number, tapes, tapes_count, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.total);
  got_number(got, out.largest_change);
  return status;
}

static recloth_status call_round_to(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_round_to(in[0].number, in[1].number, word(in[2].text, rounding_words), &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_ruffle(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_ruffle_t out;
  recloth_status status = recloth_ruffle(in[0].number, in[1].number, in[2].number, in[3].number, in[4].number, in[5].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.flat);
  got_number(got, out.cut_width);
  got_count(got, out.strips);
  got_number(got, out.cloth_length);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_screen_level(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_screen_level(in[0].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_seam_pleat(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_seam_pleat_t out;
  recloth_status status = recloth_seam_pleat(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.first_edge);
  got_number(got, out.next_edge);
  got_number(got, out.intake);
  return status;
}

static recloth_status call_sectioned_band(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  size_t tops_count = room_for((double)in[0].count, 0);
  double *tops = got_list(got, tops_count);
  recloth_sectioned_band_t out;
  recloth_status status = recloth_sectioned_band(in[0].numbers, in[0].count, in[1].number, in[2].number, word(in[3].text, square_ends_words), tops, tops_count, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.slant);
  got_number(got, out.end_angle_deg);
  got_number(got, out.join_kink_deg);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_shaped_band(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_shaped_band_t out;
  recloth_status status = recloth_shaped_band(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.inner_radius);
  got_number(got, out.outer_radius);
  got_number(got, out.angle_deg);
  got_number(got, out.sagitta);
  got_number(got, out.area_mm2);
  return status;
}

static recloth_status call_share(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_share(in[0].number, in[1].number, (uint32_t)in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_shirring(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_shirring_t out;
  recloth_status status = recloth_shirring(in[0].number, in[1].number, in[2].number, in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.flat);
  got_number(got, out.ratio);
  got_count(got, out.rows);
  got_number(got, out.stitching);
  got_count(got, out.cautions);
  return status;
}

static recloth_status call_shrink_pair(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_shrink_pair_t out;
  recloth_status status = recloth_shrink_pair(in[0].number, in[1].number, in[2].number, in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.shell_after);
  got_number(got, out.lining_after);
  got_number(got, out.below);
  got_number(got, out.shell_cut);
  got_number(got, out.lining_cut);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_size_step(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_size_step_t out;
  recloth_status status = recloth_size_step(in[0].number, in[1].number, (uint32_t)in[2].number, (uint32_t)in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.step);
  got_number(got, out.each_edge);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_skew(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_skew(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_skew_diagonals(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_skew_diagonals(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_snip_spacing(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_snip_spacing_t out;
  recloth_status status = recloth_snip_spacing(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.spacing);
  got_number(got, out.flat);
  return status;
}

static recloth_status call_spacing_by_pitch(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_spacing_by_pitch_t out;
  recloth_status status = recloth_spacing_by_pitch(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_count(got, out.count);
  got_number(got, out.pitch);
  return status;
}

static recloth_status call_spacing_through(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  size_t places_count = room_for(in[3].number, 0);
  double *places = got_list(got, places_count);
  recloth_spacing_through_t out;
  recloth_status status = recloth_spacing_through(in[0].number, in[1].number, in[2].number, (uint32_t)in[3].number, places, places_count, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.pitch_before);
  got_number(got, out.pitch_after);
  got_count(got, out.fixed);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_srgb_from_lab(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_srgb_t out;
  recloth_status status = recloth_srgb_from_lab(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.red);
  got_number(got, out.green);
  got_number(got, out.blue);
  got_count(got, out.outside);
  return status;
}

static recloth_status call_srgb_from_xyz(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_srgb_t out;
  recloth_status status = recloth_srgb_from_xyz(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.red);
  got_number(got, out.green);
  got_number(got, out.blue);
  got_count(got, out.outside);
  return status;
}

static recloth_status call_stitch_length(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_stitch_length(in[0].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_stock_volume(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_stock_volume_t out;
  recloth_status status = recloth_stock_volume(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.stock_ml);
  got_number(got, out.amount_g);
  got_count(got, out.doubts);
  got_count(got, out.cautions);
  return status;
}

static recloth_status call_straight_band(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_straight_band_t out;
  recloth_status status = recloth_straight_band(in[0].number, in[1].number, in[2].number, in[3].number, in[4].number, word(in[5].text, band_make_words), &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.cut_length);
  got_number(got, out.cut_width);
  got_count(got, out.strips);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_straight_band_depth(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_straight_band_depth(in[0].number, in[1].number, in[2].number, word(in[3].text, band_make_words), &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_stretch_pct(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_stretch_pct(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_take_in(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_take_in_t out;
  recloth_status status = recloth_take_in(in[0].number, in[1].number, in[2].number, (uint32_t)in[3].number, in[4].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.excess);
  got_number(got, out.each);
  got_number(got, out.taken);
  got_number(got, out.leftover);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_tex_from_cotton_count(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_tex_from_cotton_count(in[0].number, (uint32_t)in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_tex_from_denier(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_tex_from_denier(in[0].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_tex_from_metric_count(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_tex_from_metric_count(in[0].number, (uint32_t)in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_thread_for_seam(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_thread_for_seam(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_thread_ratio(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_thread_ratio(in[0].number, in[1].number, word(in[2].text, stitch_type_words), &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static recloth_status call_tiers(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  size_t flats_count = room_for((double)in[1].count, 0);
  double *flats = got_list(got, flats_count);
  recloth_tiers_t out;
  recloth_status status = recloth_tiers(in[0].number, in[1].numbers, in[1].count, flats, flats_count, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.hem);
  got_number(got, out.ratio);
  got_number(got, out.strip);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_tolerance_stack(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_tolerance_stack_t out;
  recloth_status status = recloth_tolerance_stack((uint32_t)in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.worst);
  got_number(got, out.likely);
  return status;
}

static recloth_status call_tolerance_stack_list(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_tolerance_stack_list_t out;
  recloth_status status = recloth_tolerance_stack_list(in[0].numbers, in[0].count, in[1].counts, in[1].count, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.worst);
  got_number(got, out.likely);
  got_count(got, out.largest);
  got_number(got, out.largest_part);
  return status;
}

static recloth_status call_trilaterate(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_trilaterate_t out;
  recloth_status status = recloth_trilaterate(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.along);
  got_number(got, out.across);
  got_number(got, out.along_per_mm);
  got_number(got, out.across_per_mm);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_tucks(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_tucks_t out;
  recloth_status status = recloth_tucks(in[0].number, (uint32_t)in[1].number, in[2].number, in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.flat);
  got_number(got, out.taken_up);
  got_number(got, out.fold_pitch);
  got_number(got, out.gap);
  got_number(got, out.margin);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_turn_through(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_turn_through_t out;
  recloth_status status = recloth_turn_through(in[0].number, in[1].number, in[2].number, in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.diameter);
  got_number(got, out.least_opening);
  got_number(got, out.spare);
  return status;
}

static recloth_status call_turned_hem(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_turned_hem_t out;
  recloth_status status = recloth_turned_hem(in[0].number, in[1].number, in[2].number, in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.allowance);
  got_number(got, out.cut_length);
  return status;
}

static recloth_status call_v_neck(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_v_neck_t out;
  recloth_status status = recloth_v_neck(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.edge);
  got_number(got, out.off_grain_deg);
  got_number(got, out.stay);
  return status;
}

static recloth_status call_waist_hip_doubts(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  uint64_t out = 0;
  recloth_status status = recloth_waist_hip_doubts(in[0].number, in[1].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_count(got, out);
  return status;
}

static recloth_status call_washes(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_washes_t out;
  recloth_status status = recloth_washes(in[0].number, in[1].number, in[2].number, (uint32_t)in[3].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.after);
  got_number(got, out.change_pct);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_wearing_ease(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_wearing_ease_t out;
  recloth_status status = recloth_wearing_ease(in[0].number, word(in[1].text, ease_place_words), &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.low);
  got_number(got, out.high);
  got_number(got, out.garment_low);
  got_number(got, out.garment_high);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_width_conversion(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_width_conversion_t out;
  recloth_status status = recloth_width_conversion(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.by_area);
  got_number(got, out.low);
  got_number(got, out.high);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_wrap_skirt(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_wrap_skirt_t out;
  recloth_status status = recloth_wrap_skirt(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.back_waist);
  got_number(got, out.back_hip);
  got_number(got, out.front_waist);
  got_number(got, out.front_hip);
  got_number(got, out.waist_edge);
  got_number(got, out.wrap_pct);
  got_count(got, out.doubts);
  return status;
}

static recloth_status call_xyz_from_lab(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_xyz_t out;
  recloth_status status = recloth_xyz_from_lab(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.x);
  got_number(got, out.y);
  got_number(got, out.z);
  return status;
}

static recloth_status call_xyz_from_srgb(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_xyz_t out;
  recloth_status status = recloth_xyz_from_srgb(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.x);
  got_number(got, out.y);
  got_number(got, out.z);
  return status;
}

static recloth_status call_zigzag_buttonhole(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_zigzag_buttonhole_t out;
  recloth_status status = recloth_zigzag_buttonhole(in[0].number, in[1].number, in[2].number, in[3].number, in[4].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.length);
  got_number(got, out.width);
  got_count(got, out.stitches);
  return status;
}

static recloth_status call_zip_length(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_zip_length_t out;
  recloth_status status = recloth_zip_length(in[0].number, in[1].number, in[2].number, in[3].number, in[4].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.needed);
  got_number(got, out.buy);
  got_number(got, out.shorten);
  got_number(got, out.top_stop);
  got_number(got, out.bottom_stop);
  return status;
}

static recloth_status call_zip_opening(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  double out = 0;
  recloth_status status = recloth_zip_opening(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out);
  return status;
}

static const function_t functions[] = {
  {"arc_from_rise", "nn", 3, call_arc_from_rise},
  {"assistant_volume", "nnnn", 4, call_assistant_volume},
  {"available_chlorine", "nn", 4, call_available_chlorine},
  {"batches", "lnnn", 7, call_batches},
  {"bath_volume", "nn", 3, call_bath_volume},
  {"bias_along_selvedge", "n", 1, call_bias_along_selvedge},
  {"bias_square", "nn", 1, call_bias_square},
  {"bias_strip_length", "nn", 1, call_bias_strip_length},
  {"bias_strips", "nnnnn", 4, call_bias_strips},
  {"bias_tube", "nnnn", 3, call_bias_tube},
  {"binder_solids", "nnnnn", 6, call_binder_solids},
  {"binding_length", "nnnn", 1, call_binding_length},
  {"binding_strips", "nnn", 2, call_binding_strips},
  {"binding_width", "nnnt", 1, call_binding_width},
  {"bleach_dilution", "nnnntttt", 5, call_bleach_dilution},
  {"bleach_time", "llnnttttn", 5, call_bleach_time},
  {"body_length_doubts", "n", 1, call_body_length_doubts},
  {"box_pleats", "nnn", 9, call_box_pleats},
  {"box_pleats_count", "nnn", 9, call_box_pleats_count},
  {"box_pleats_depth", "nnn", 9, call_box_pleats_depth},
  {"box_pleats_finished", "nnn", 9, call_box_pleats_finished},
  {"breadths", "nnn", 3, call_breadths},
  {"button_diameter", "n", 1, call_button_diameter},
  {"button_for_hole", "nnn", 2, call_button_for_hole},
  {"button_for_stand", "nn", 1, call_button_for_stand},
  {"button_loop", "nnnnnnt", 3, call_button_loop},
  {"button_stand", "nn", 3, call_button_stand},
  {"buttonhole", "nnn", 1, call_buttonhole},
  {"cap_ease", "nn", 3, call_cap_ease},
  {"cap_for_ease", "nn", 1, call_cap_for_ease},
  {"cap_width_bound", "nn", 1, call_cap_width_bound},
  {"carried_liquor", "nn", 3, call_carried_liquor},
  {"casing", "nnnn", 2, call_casing},
  {"ciede2000", "nnnnnn", 1, call_ciede2000},
  {"circle_skirt", "nnn", 4, call_circle_skirt},
  {"circle_skirt_fraction", "nnnn", 8, call_circle_skirt_fraction},
  {"circle_skirt_longest", "nnnn", 8, call_circle_skirt_longest},
  {"cloth_mass", "nnn", 1, call_cloth_mass},
  {"cloth_to_buy", "nnnn", 1, call_cloth_to_buy},
  {"component_check", "ttttnn", 4, call_component_check},
  {"cover_mark", "nnn", 5, call_cover_mark},
  {"curved_band", "lnn", 5, call_curved_band},
  {"curved_binding", "nnnt", 3, call_curved_binding},
  {"cut_for_change", "nn", 3, call_cut_for_change},
  {"cut_state", "nnn", 2, call_cut_state},
  {"dart", "nn", 3, call_dart},
  {"dart_equivalent", "nnn", 4, call_dart_equivalent},
  {"dart_from_gape", "nnn", 2, call_dart_from_gape},
  {"dart_in_panel", "nnnnn", 5, call_dart_in_panel},
  {"dart_turned", "nnn", 1, call_dart_turned},
  {"dart_width_at", "nnn", 1, call_dart_width_at},
  {"deepest_hem", "nn", 1, call_deepest_hem},
  {"dimensional_change", "nn", 1, call_dimensional_change},
  {"double_dart", "nnn", 6, call_double_dart},
  {"elastic", "nnnn", 6, call_elastic},
  {"even_spacing", "nnn", 1, call_even_spacing},
  {"five_gores", "nn", 7, call_five_gores},
  {"flounce", "nnnn", 5, call_flounce},
  {"folded_band", "nnnn", 3, call_folded_band},
  {"format_length", "nt", 1, call_format_length},
  {"front_back_doubts", "nn", 1, call_front_back_doubts},
  {"frustum", "nnn", 5, call_frustum},
  {"gather_ratio", "nn", 4, call_gather_ratio},
  {"gather_sections", "ln", 4, call_gather_sections},
  {"gathers", "nn", 4, call_gathers},
  {"girth_doubts", "n", 1, call_girth_doubts},
  {"godet", "nnn", 4, call_godet},
  {"gore", "nnnnnn", 7, call_gore},
  {"gsm_from_ounces", "n", 1, call_gsm_from_ounces},
  {"gusset", "nnn", 4, call_gusset},
  {"head_opening", "nnnn", 3, call_head_opening},
  {"hem_let_down", "nnnnn", 5, call_hem_let_down},
  {"hem_on_curve", "nnn", 3, call_hem_on_curve},
  {"hip_waist_drop", "nn", 2, call_hip_waist_drop},
  {"holes_left", "nnn", 4, call_holes_left},
  {"insert_strip", "nnnt", 3, call_insert_strip},
  {"k_over_s", "n", 1, call_k_over_s},
  {"knife_pleats", "nnn", 9, call_knife_pleats},
  {"knife_pleats_count", "nnn", 9, call_knife_pleats_count},
  {"knife_pleats_depth", "nnn", 9, call_knife_pleats_depth},
  {"knife_pleats_finished", "nnn", 9, call_knife_pleats_finished},
  {"lab_from_srgb", "nnn", 3, call_lab_from_srgb},
  {"lab_from_xyz", "nnnnn", 3, call_lab_from_xyz},
  {"lacing", "nnnn", 1, call_lacing},
  {"length_chain", "llnn", 5, call_length_chain},
  {"length_chain_shares", "lllnnn", 7, call_length_chain_shares},
  {"let_out", "nnnnnn", 5, call_let_out},
  {"level_line", "nnn", 4, call_level_line},
  {"linear_light", "n", 1, call_linear_light},
  {"lining_free_length", "nnn", 1, call_lining_free_length},
  {"lining_length", "nnn", 5, call_lining_length},
  {"lining_width", "nnnn", 1, call_lining_width},
  {"liquor_shares", "lnn", 6, call_liquor_shares},
  {"loop_slack", "nnnnnnt", 2, call_loop_slack},
  {"mix_temperature", "llnnn", 4, call_mix_temperature},
  {"nap_layout", "nnnnn", 6, call_nap_layout},
  {"neck_bust_doubts", "nn", 1, call_neck_bust_doubts},
  {"needle_blade", "n", 2, call_needle_blade},
  {"needle_metric", "n", 1, call_needle_metric},
  {"negative_ease", "nnnn", 4, call_negative_ease},
  {"neutraliser", "nntttnn", 5, call_neutraliser},
  {"off_centre_opening", "nnnnnn", 8, call_off_centre_opening},
  {"overdye", "nnn", 4, call_overdye},
  {"owf", "nn", 3, call_owf},
  {"panel_by_offsets", "lll", 7, call_panel_by_offsets},
  {"panel_by_triangles", "nccllcccl", 9, call_panel_by_triangles},
  {"parse_length", "t", 1, call_parse_length},
  {"photo_map", "llllll", 6, call_photo_map},
  {"pieced_length", "lnn", 4, call_pieced_length},
  {"piping_width", "nnn", 1, call_piping_width},
  {"plant_dyestuff", "nnnttnn", 4, call_plant_dyestuff},
  {"pooled_strength", "ll", 3, call_pooled_strength},
  {"puff_spread", "nnnn", 5, call_puff_spread},
  {"reflectance", "n", 1, call_reflectance},
  {"relative_strength", "nn", 1, call_relative_strength},
  {"remaining_width", "nnnnn", 1, call_remaining_width},
  {"repeats", "nnn", 4, call_repeats},
  {"ribbing", "nnnn", 4, call_ribbing},
  {"rinses", "nnnn", 6, call_rinses},
  {"round_set", "ln", 3, call_round_set},
  {"round_to", "nnt", 1, call_round_to},
  {"ruffle", "nnnnnn", 5, call_ruffle},
  {"screen_level", "n", 1, call_screen_level},
  {"seam_pleat", "nn", 3, call_seam_pleat},
  {"sectioned_band", "lnnt", 5, call_sectioned_band},
  {"shaped_band", "nnn", 5, call_shaped_band},
  {"share", "nnn", 1, call_share},
  {"shirring", "nnnn", 5, call_shirring},
  {"shrink_pair", "nnnn", 6, call_shrink_pair},
  {"size_step", "nnnn", 3, call_size_step},
  {"skew", "nn", 1, call_skew},
  {"skew_diagonals", "nn", 1, call_skew_diagonals},
  {"snip_spacing", "nnn", 2, call_snip_spacing},
  {"spacing_by_pitch", "nnn", 2, call_spacing_by_pitch},
  {"spacing_through", "nnnn", 5, call_spacing_through},
  {"srgb_from_lab", "nnn", 4, call_srgb_from_lab},
  {"srgb_from_xyz", "nnn", 4, call_srgb_from_xyz},
  {"stitch_length", "n", 1, call_stitch_length},
  {"stock_volume", "nnn", 4, call_stock_volume},
  {"straight_band", "nnnnnt", 4, call_straight_band},
  {"straight_band_depth", "nnnt", 1, call_straight_band_depth},
  {"stretch_pct", "nn", 1, call_stretch_pct},
  {"take_in", "nnnnn", 5, call_take_in},
  {"tex_from_cotton_count", "nn", 1, call_tex_from_cotton_count},
  {"tex_from_denier", "n", 1, call_tex_from_denier},
  {"tex_from_metric_count", "nn", 1, call_tex_from_metric_count},
  {"thread_for_seam", "nnn", 1, call_thread_for_seam},
  {"thread_ratio", "nnt", 1, call_thread_ratio},
  {"tiers", "nl", 5, call_tiers},
  {"tolerance_stack", "nn", 2, call_tolerance_stack},
  {"tolerance_stack_list", "lc", 4, call_tolerance_stack_list},
  {"trilaterate", "nnn", 5, call_trilaterate},
  {"tucks", "nnnn", 6, call_tucks},
  {"turn_through", "nnnn", 3, call_turn_through},
  {"turned_hem", "nnnn", 2, call_turned_hem},
  {"v_neck", "nnn", 3, call_v_neck},
  {"waist_hip_doubts", "nn", 1, call_waist_hip_doubts},
  {"washes", "nnnn", 3, call_washes},
  {"wearing_ease", "nt", 5, call_wearing_ease},
  {"width_conversion", "nnn", 4, call_width_conversion},
  {"wrap_skirt", "nnn", 7, call_wrap_skirt},
  {"xyz_from_lab", "nnn", 3, call_xyz_from_lab},
  {"xyz_from_srgb", "nnn", 3, call_xyz_from_srgb},
  {"zigzag_buttonhole", "nnnnn", 3, call_zigzag_buttonhole},
  {"zip_length", "nnnnn", 5, call_zip_length},
  {"zip_opening", "nnn", 1, call_zip_opening},
  {NULL, NULL, 0, NULL},
};
