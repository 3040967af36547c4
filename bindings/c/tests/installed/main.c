/* A program of somebody else: it knows the installed library alone. */
#include <stdio.h>

#include <recloth.h>

int main(void) {
  recloth_circle_skirt_t skirt;

  if (recloth_circle_skirt(710, 600, 0.5, &skirt, NULL) != RECLOTH_STATUS_OK) {
    return 1;
  }
  printf("recloth %s: %.1f\n", recloth_version(), skirt.waist_radius);
  return 0;
}
