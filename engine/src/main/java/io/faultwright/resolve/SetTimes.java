package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problems;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Stretch;
import io.faultwright.model.Sequence.Time;
import io.faultwright.quantity.Decimals;
import io.faultwright.quantity.Exact;
import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads times that somebody gives for one sequence, as they are written in a knowledge base. */
public final class SetTimes {
  private final Sequence sequence;

  public SetTimes(Sequence sequence) {
    this.sequence = sequence;
  }

  /**
   * Seconds, a multiple of the step; zero too.
   *
   * @param what gives it, for messages, such as the name of an option
   * @throws Unreadable where it is no time
   */
  public BigFraction seconds(String what, String text) {
    Problems problems = new Problems();
    Optional<BigFraction> seconds = durations(problems).moment(place(what, text), text.strip());
    if (seconds.filter(one -> one.signum() < 0).isPresent()) {
      problems.add(place(what, text), "a time is zero or more", "write a time such as `2 s`");
    }
    require(problems, what, text);
    return seconds.orElseThrow();
  }

  /**
   * Seconds to which times are set, by their ids.
   *
   * @param what gives them, for messages
   * @param given by id, as written
   * @throws Unreadable where there is no such time, it cannot be set, or not so
   */
  public SortedMap<String, BigFraction> all(String what, Map<String, String> given) {
    SortedMap<String, BigFraction> all = new TreeMap<>();
    new TreeMap<>(given).forEach((id, text) -> all.put(id, set(what, id, text)));
    return all;
  }

  private BigFraction set(String what, String id, String text) {
    String whole = id + "=" + text;
    Problems problems = new Problems();
    Optional<BigFraction> seconds =
        known(id, place(what, whole), problems)
            .flatMap(
                time ->
                    durations(problems)
                        .read(place(what, whole), text.strip())
                        .filter(read -> fits(time, read, place(what, whole), problems)));
    require(problems, what, whole);
    return seconds.orElseThrow();
  }

  private Optional<Time> known(String id, Place place, Problems problems) {
    List<String> ids = sequence.times().stream().map(Time::id).toList();
    if (!ids.contains(id)) {
      problems.add(place, "unknown time " + Words.quoted(id), NearMatch.help(id, ids));
      return Optional.empty();
    }
    return Optional.of(sequence.time(id));
  }

  /** Whether a time can be set so; reports it where it cannot. */
  static boolean fits(Time time, BigFraction seconds, Place place, Problems problems) {
    if (time.setting().isEmpty()) {
      problems.add(
          place,
          Words.quoted(time.id()) + " cannot be set on the controller",
          "write `set: 1 min to 6 min` at it in the sequence where it can");
      return false;
    }
    Stretch setting = time.setting().get();
    boolean within =
        Exact.compare(setting.low(), seconds) <= 0 && Exact.compare(seconds, setting.high()) <= 0;
    if (!within) {
      problems.add(
          place,
          Words.quoted(time.id())
              + " can be set from "
              + Decimals.show(setting.low())
              + " s to "
              + Decimals.show(setting.high())
              + " s, found "
              + Decimals.show(seconds)
              + " s",
          "give a time in between");
    }
    return within;
  }

  private Durations durations(Problems problems) {
    return new Durations(new QuantityParser(problems), problems, sequence.step());
  }

  private static Place place(String what, String text) {
    return new Place(what, 1, 1, text.length());
  }

  private static void require(Problems problems, String what, String text) {
    if (!problems.isEmpty()) {
      throw new Unreadable(problems.sorted(), new Sources(List.of(SourceFile.of(what, text))));
    }
  }
}
