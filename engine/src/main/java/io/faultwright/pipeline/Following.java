package io.faultwright.pipeline;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.logbook.Entry;
import io.faultwright.logbook.Followed;
import io.faultwright.logbook.Follower;
import io.faultwright.logbook.LogInput;
import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Sequence;
import io.faultwright.model.Version;
import io.faultwright.operation.Program;
import io.faultwright.operation.Restless;
import io.faultwright.quantity.Decimals;
import io.faultwright.resolve.Resolution;
import io.faultwright.resolve.Resolver;
import io.faultwright.resolve.SetTimes;
import io.faultwright.source.Sources;
import java.math.BigInteger;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** Follows a log with a sequence of operation, as one build runs it. */
public final class Following {
  private final Resolution resolution;
  private final KnowledgeBase kb;

  /**
   * For the knowledge base in these files.
   *
   * @throws Unreadable with every problem of every file
   */
  public Following(Sources sources) {
    this.resolution = Resolver.resolution(sources);
    this.kb = resolution.knowledge();
  }

  public KnowledgeBase knowledge() {
    return kb;
  }

  /** What the rules say of what a log of that program tells. */
  public LogDiagnosis diagnosis(Program program) {
    return new LogDiagnosis(resolution, program);
  }

  /**
   * A sequence as one build runs it.
   *
   * @param software absent where the model has only one
   * @param set times set on the controller, by id, as they are written
   * @throws Unreadable where there is no such sequence, build or time
   */
  public Program program(
      String sequence, String model, Optional<String> software, Map<String, String> set) {
    require(sequence, kb.sequences().keySet(), "sequence");
    require(model, kb.equipment().models().keySet(), "model");
    Sequence found = kb.sequences().get(sequence);
    Build build = build(model, software);
    if (!build.satisfies(found.applies())) {
      throw problem("`" + sequence + "` is not the sequence of " + build, fitting(build), found);
    }
    return Program.of(found, build, new SetTimes(found).all("--set", set));
  }

  private static void require(String id, Collection<String> known, String noun) {
    if (!known.contains(id)) {
      String help = known.isEmpty() ? "the knowledge base has none" : NearMatch.help(id, known);
      throw new Unreadable(
          List.of(new Problem(List.of(), "there is no " + noun + " `" + id + "`", help)));
    }
  }

  private static Unreadable problem(String message, String help, Sequence at) {
    return new Unreadable(List.of(Problem.at(at.place(), message, help)));
  }

  private Build build(String model, Optional<String> software) {
    List<Build> builds =
        kb.equipment().builds().stream().filter(one -> one.model().id().equals(model)).toList();
    if (software.isEmpty() && builds.size() == 1) {
      return builds.get(0);
    }
    List<String> versions =
        builds.stream().flatMap(one -> one.software().stream()).map(Version::text).toList();
    String wanted =
        software.orElseThrow(
            () ->
                new Unreadable(
                    List.of(
                        new Problem(
                            List.of(),
                            "`" + model + "` has several software versions",
                            "add `--software` with one of `"
                                + String.join("`, `", versions)
                                + "`"))));
    require(wanted, versions, "`" + model + "` with software");
    return builds.get(versions.indexOf(wanted));
  }

  private String fitting(Build build) {
    return kb.sequences().values().stream()
        .filter(one -> build.satisfies(one.applies()))
        .map(one -> "`" + one.id() + "`")
        .collect(
            Collectors.collectingAndThen(
                Collectors.joining(", "),
                ids -> ids.isEmpty() ? "no sequence is for it" : "for it there is " + ids));
  }

  /**
   * Follows a log to its end, in memory that does not grow with it.
   *
   * @param until a step up to which it is followed further
   * @param each is told of every entry
   * @throws Unreadable where the log cannot be read, or the sequence does not come to rest
   */
  public static Followed follow(
      Follower follower, LogInput log, Program program, long until, Runnable each) {
    try {
      Optional<Entry> entry = log.next();
      while (entry.isPresent()) {
        follower.accept(entry.get());
        each.run();
        entry = log.next();
      }
      return follower.end(until);
    } catch (Restless restless) {
      BigFraction at = program.sequence().step().multiply(BigInteger.valueOf(restless.step()));
      throw problem(
          "at " + Decimals.show(at) + " s phase follows phase without end",
          "`check` says which phases lead to each other at once",
          program.sequence());
    }
  }
}
