package io.faultwright.report;

import com.fasterxml.jackson.core.JsonGenerator;
import io.faultwright.diagnostic.Problem;
import java.io.IOException;
import java.util.List;

/** What keeps a knowledge base from being read, for machines. */
public final class ProblemJson {
  private ProblemJson() {}

  public static String write(List<Problem> problems) {
    return Json.object(json -> problems(json, problems));
  }

  static void problems(JsonGenerator json, List<Problem> problems) throws IOException {
    json.writeArrayFieldStart("problems");
    for (Problem problem : problems) {
      json.writeStartObject();
      Json.places(json, problem.places());
      json.writeStringField("message", problem.message());
      json.writeStringField("help", problem.help());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
