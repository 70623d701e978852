package io.faultwright.report;

import com.fasterxml.jackson.core.JsonGenerator;
import io.faultwright.report.ChartEffort.Average;
import io.faultwright.report.ChartEffort.Detour;
import io.faultwright.report.ChartEffort.Hazard;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** What an authored chart takes beside the cheapest order, for machines. */
final class ChartEffortJson {
  private ChartEffortJson() {}

  static void write(JsonGenerator json, Optional<ChartEffort> effort) throws IOException {
    if (effort.isEmpty()) {
      json.writeNullField("effort");
      return;
    }
    json.writeObjectFieldStart("effort");
    average(json, "chart", effort.get().chart());
    average(json, "cheapest", effort.get().cheapest());
    json.writeNumberField("atLeast", rounded(effort.get().atLeast()));
    json.writeBooleanField("exact", effort.get().exact());
    json.writeNumberField("difference", rounded(effort.get().difference()));
    detour(json, effort.get().detour());
    hazard(json, effort.get().hazard());
    json.writeEndObject();
  }

  private static void average(JsonGenerator json, String field, Average average)
      throws IOException {
    json.writeObjectFieldStart(field);
    json.writeNumberField("minutes", rounded(average.minutes()));
    json.writeNumberField("effort", rounded(average.effort()));
    json.writeEndObject();
  }

  private static void detour(JsonGenerator json, Optional<Detour> detour) throws IOException {
    if (detour.isEmpty()) {
      json.writeNullField("detour");
      return;
    }
    json.writeObjectFieldStart("detour");
    json.writeStringField("step", detour.get().step());
    json.writeStringField("check", detour.get().check());
    Json.optional(json, "better", detour.get().better());
    json.writeBooleanField("later", detour.get().later());
    json.writeNumberField("effort", rounded(detour.get().effort()));
    json.writeEndObject();
  }

  private static void hazard(JsonGenerator json, Optional<Hazard> hazard) throws IOException {
    if (hazard.isEmpty()) {
      json.writeNullField("hazard");
      return;
    }
    json.writeObjectFieldStart("hazard");
    json.writeStringField("step", hazard.get().step());
    json.writeStringField("check", hazard.get().check());
    json.writeStringField("before", hazard.get().before());
    json.writeEndObject();
  }

  /** Without the last digits, in which sums in another order differ. */
  private static BigDecimal rounded(double value) {
    return BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_UP);
  }
}
