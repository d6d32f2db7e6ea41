/* Stands in for java.exe where trammel.cmd is tried: prints its arguments, one a line, in UTF-8, and
   ends with the status in STAND_IN_STATUS, 100 without. */
#include <stdio.h>
#include <stdlib.h>
#include <windows.h>

int wmain(int count, wchar_t **words) {
  for (int i = 1; i < count; i++) {
    char line[8192];
    int length = WideCharToMultiByte(CP_UTF8, 0, words[i], -1, line, sizeof line, NULL, NULL);
    fwrite(line, 1, length > 0 ? length - 1 : 0, stdout);
    fputs("\n", stdout);
  }
  const char *status = getenv("STAND_IN_STATUS");
  return status ? atoi(status) : 100;
}
