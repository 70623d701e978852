package io.faultwright.analysis.operation;

import io.faultwright.model.Build;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Time;
import io.faultwright.operation.Program;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The ways in which a sequence is run: by the builds that differ, with the times as delivered, and
 * with each time that can be set at both ends of its stretch.
 */
final class Variant {
  private Variant() {}

  /** One program for each way, those with the times as delivered first. */
  static List<Program> all(Sequence sequence, List<Build> builds) {
    List<Program> programs = new ArrayList<>();
    Set<List<Object>> seen = new HashSet<>();
    for (Build build : builds) {
      add(Program.of(sequence, build), seen, programs);
    }
    for (Time time : sequence.times()) {
      time.setting()
          .ifPresent(
              ends -> {
                for (Build build : builds) {
                  for (BigFraction end : List.of(ends.low(), ends.high())) {
                    add(Program.of(sequence, build, Map.of(time.id(), end)), seen, programs);
                  }
                }
              });
    }
    return programs;
  }

  private static void add(Program program, Set<List<Object>> seen, List<Program> programs) {
    if (seen.add(program.behaviour())) {
      programs.add(program);
    }
  }
}
