package io.faultwright.pipeline;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.logbook.Followed;
import io.faultwright.model.Case;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Situation;
import io.faultwright.model.Value;
import io.faultwright.operation.OutcomeReadings;
import io.faultwright.operation.Program;
import io.faultwright.report.CaseRun;
import io.faultwright.resolve.GivenCase;
import io.faultwright.resolve.GivenCases;
import io.faultwright.resolve.Resolution;
import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** What the rules of a symptom say of what a log tells. */
public final class LogDiagnosis {
  private static final String GIVEN = "--given";

  private final Resolution resolution;
  private final KnowledgeBase kb;
  private final Program program;

  LogDiagnosis(Resolution resolution, Program program) {
    this.resolution = resolution;
    this.kb = resolution.knowledge();
    this.program = program;
  }

  /**
   * Runs what the log tells through the rules. Where log and model part, only the stop that the log
   * shows is told: what the model counts and times is not what the machine did.
   *
   * @param given further readings and how times are set, by id, as they are written
   * @throws Unreadable where there is no such symptom, or a reading cannot be read
   */
  public CaseRun run(Followed followed, String symptom, Map<String, String> given) {
    if (!kb.symptoms().containsKey(symptom)) {
      String help = NearMatch.help(symptom, kb.symptoms().keySet());
      String message = "there is no symptom `" + symptom + "`";
      throw new Unreadable(List.of(new Problem(List.of(), message, help)));
    }
    Case told = with(read(symptom, given).recorded(), followed);
    return new CaseJudge(kb).run(new GivenCase(told, false));
  }

  private Case with(Case given, Followed followed) {
    SortedMap<String, Value> values = new TreeMap<>(told(followed));
    values.putAll(given.given().readings());
    return new Case(
        "log",
        given.place(),
        given.symptom(),
        new Situation(given.given().equipment(), values),
        new TreeSet<>(),
        false,
        "",
        given.origin(),
        given.unclear());
  }

  private SortedMap<String, Value> told(Followed followed) {
    OutcomeReadings tells = new OutcomeReadings(program.sequence(), kb.readings());
    SortedMap<String, Value> values = new TreeMap<>(tells.told(program.set()));
    if (followed.agrees()) {
      values.putAll(tells.of(followed.outcomes()));
    } else {
      followed.stopSeen().ifPresent(stop -> values.putAll(tells.stop(stop)));
    }
    return values;
  }

  /** The case of that machine, its places those of a text that shows what was given. */
  private GivenCase read(String symptom, Map<String, String> given) {
    List<String> lines = new ArrayList<>();
    List<Entry> situation = new ArrayList<>();
    Map<String, String> all = new TreeMap<>(given);
    program.build().facts().forEach(all::putIfAbsent);
    for (Map.Entry<String, String> one : all.entrySet()) {
      lines.add(one.getKey() + "=" + one.getValue());
      int line = lines.size();
      int value = one.getKey().length() + 2;
      situation.add(new Entry(scalar(one.getKey(), line, 1), scalar(one.getValue(), line, value)));
    }
    Place place = new Place(GIVEN, 1, 1, 1);
    MapNode body =
        new MapNode(
            List.of(
                new Entry(scalar("symptom", 1, 1), scalar(symptom, 1, 1)),
                new Entry(scalar("given", 1, 1), new MapNode(situation, place))),
            place);
    GivenCases read = resolution.intake().read(new Entry(scalar("log", 1, 1), body));
    if (!read.problems().isEmpty()) {
      Sources shown = new Sources(List.of(SourceFile.of(GIVEN, String.join("\n", lines))));
      throw new Unreadable(read.problems(), shown);
    }
    return read.cases().get(0);
  }

  private static Scalar scalar(String text, int line, int column) {
    return new Scalar(text, false, new Place(GIVEN, line, column, Math.max(1, text.length())));
  }
}
