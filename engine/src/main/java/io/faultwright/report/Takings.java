package io.faultwright.report;

import com.fasterxml.jackson.core.JsonGenerator;
import io.faultwright.ambiguity.Taking;
import io.faultwright.wording.Wording;
import java.io.IOException;
import java.util.SortedSet;

/** Readings taken together, for people and for machines. */
final class Takings {
  private Takings() {}

  /** What they are and what they take, for instance {@code drier-drop (5 min, outside)}. */
  static String words(Taking taking) {
    return taking.readings().isEmpty()
        ? "the nameplate"
        : named(taking) + " (" + Wording.effort(taking.effort()) + ")";
  }

  /** The same with what they are taken for: {@code superheat by line and pressure (…)}. */
  static String words(String reading, Taking taking) {
    if (taking.readings().contains(reading)) {
      return words(taking);
    }
    return reading + " by " + and(taking.readings()) + " (" + Wording.effort(taking.effort()) + ")";
  }

  private static String named(Taking taking) {
    return and(taking.readings())
        + (taking.computed().isEmpty() ? "" : ", for " + and(taking.computed()));
  }

  private static String and(SortedSet<String> ids) {
    String all = String.join(", ", ids);
    int last = all.lastIndexOf(", ");
    return last < 0 ? all : all.substring(0, last) + " and " + all.substring(last + 2);
  }

  /** The members of an object that says them. */
  static void members(JsonGenerator json, Taking taking) throws IOException {
    Json.strings(json, "take", taking.readings());
    Json.strings(json, "computed", taking.computed());
    json.writeNumberField("minutes", taking.effort().minutes().doubleValue());
    json.writeStringField("access", taking.effort().access().word());
    json.writeNumberField("weighted", taking.effort().weighted().doubleValue());
  }
}
