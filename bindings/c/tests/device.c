/* The least program of a device: no operating system, no C library, one sum. */

#include "recloth.h"

volatile double waist = 710;
volatile double hem;

int main(void) {
  recloth_circle_skirt_t skirt;
  recloth_error_t error;
  recloth_status status = recloth_circle_skirt(waist, 600, 0.5, &skirt, &error);
  if (status == RECLOTH_STATUS_OK) hem = skirt.hem_length;
  return (int)status;
}
