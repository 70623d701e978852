package io.faultwright.measure;

/** placeholder */
final class HeatingRules {
  void happen(long step, int input, int state) {}

  void end() {}

  long phases() {
    return 0;
  }

  long stops() {
    return 0;
  }
}
