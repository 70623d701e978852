package io.faultwright.report;

import io.faultwright.diagnostic.Problem;
import java.util.List;

/** What keeps a knowledge base from being read, for machines. */
public final class ProblemJson {
  private ProblemJson() {}

  public static String write(List<Problem> problems) {
    return Json.object(
        json -> {
          json.writeArrayFieldStart("problems");
          for (Problem problem : problems) {
            json.writeStartObject();
            Json.places(json, problem.places());
            json.writeStringField("message", problem.message());
            json.writeStringField("help", problem.help());
            json.writeEndObject();
          }
          json.writeEndArray();
        });
  }
}
