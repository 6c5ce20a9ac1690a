// SPDX-License-Identifier: Apache-2.0
// Stands in for Java: tells its version, else writes down how it was called, and ends as told.
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

int main(int argc, char **argv) {
  const char *version = getenv("STAND_IN_VERSION");
  if (argc == 2 && strcmp(argv[1], "--version") == 0) {
    printf("openjdk %s 2024-10-15\n", version ? version : "17.0.13");
    return 0;
  }
  FILE *told = fopen(getenv("STAND_IN_TELLS"), "w");
  for (int i = 1; told && i < argc; i++) {
    fprintf(told, "%s\n", argv[i]);
  }
  if (told) {
    fclose(told);
  }
  const char *code = getenv("STAND_IN_CODE");
  return code ? atoi(code) : 0;
}
