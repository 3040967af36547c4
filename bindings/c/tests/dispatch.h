/* Written by `cargo xtask generate`; do not edit. Calls every function by its name. */


static recloth_status call_circle_skirt(const cell_t *in, outcome_t *got, recloth_error_t *error) {
  recloth_circle_skirt_t out;
  recloth_status status = recloth_circle_skirt(in[0].number, in[1].number, in[2].number, &out, error);
  if (status != RECLOTH_STATUS_OK) return status;
  got_number(got, out.waist_radius);
  got_number(got, out.hem_radius);
  got_number(got, out.hem_length);
  return status;
}

static const function_t functions[] = {
  {"circle_skirt", "nnn", 3, call_circle_skirt},
  {NULL, NULL, 0, NULL},
};
