package io.faultwright.finding;

import io.faultwright.model.Situation;
import io.faultwright.source.Place;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Something the checking found.
 *
 * @param kind what kind of thing
 * @param symptom id of the symptom it concerns
 * @param rules ids of the rules it concerns
 * @param places where to look, most telling first
 * @param message what is wrong: lower case, no full stop, names in backticks
 * @param help the cure
 * @param witness a concrete situation that shows it
 * @param region all such situations of this finding, an <i>and</i> of its tests
 * @param share how many distinguishable situations that is
 * @param chart id of the authored chart it concerns; absent for most
 * @param course of events that shows it; absent for all but sequences of operation
 * @param replayed whether Drools agreed on the witness
 */
public record Finding(
    FindingKind kind,
    Optional<String> symptom,
    List<String> rules,
    List<Place> places,
    String message,
    String help,
    Optional<Situation> witness,
    List<RegionTest> region,
    Optional<Share> share,
    Optional<String> chart,
    Optional<EventCourse> course,
    boolean replayed) {
  /** Errors first, then by kind, symptom, rules and message. */
  public static final Comparator<Finding> ORDER =
      Comparator.comparing((Finding finding) -> finding.kind)
          .thenComparing(finding -> finding.symptom.orElse(""))
          .thenComparing(finding -> String.join(" ", finding.rules))
          .thenComparing((a, b) -> Double.compare(b.shareOrZero(), a.shareOrZero()))
          .thenComparing(finding -> finding.places.toString())
          .thenComparing(Finding::message)
          .thenComparing(finding -> finding.region.toString());

  public Finding {
    rules = List.copyOf(rules);
    places = List.copyOf(places);
    region = List.copyOf(region);
  }

  /** A finding about the text alone, without a situation. */
  public static Finding of(FindingKind kind, Place place, String message, String help) {
    return of(kind, List.of(place), message, help);
  }

  /** A finding about several places of the text, most telling first. */
  public static Finding of(FindingKind kind, List<Place> places, String message, String help) {
    return new Finding(
        kind,
        Optional.empty(),
        List.of(),
        places,
        message,
        help,
        Optional.empty(),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        false);
  }

  /** The same finding within a symptom and some of its rules. */
  public Finding in(String symptomId, List<String> ruleIds) {
    return new Finding(
        kind,
        Optional.of(symptomId),
        ruleIds,
        places,
        message,
        help,
        witness,
        region,
        share,
        chart,
        course,
        replayed);
  }

  /** The same finding about an authored chart. */
  public Finding onChart(String chartId) {
    return new Finding(
        kind,
        symptom,
        rules,
        places,
        message,
        help,
        witness,
        region,
        share,
        Optional.of(chartId),
        course,
        replayed);
  }

  /** The same finding with the situation that shows it. */
  public Finding shownBy(Situation situation, List<RegionTest> box, Optional<Share> part) {
    return new Finding(
        kind,
        symptom,
        rules,
        places,
        message,
        help,
        Optional.of(situation),
        box,
        part,
        chart,
        course,
        replayed);
  }

  /** The same finding with the build and the course of events that show it. */
  public Finding shownBy(Situation build, EventCourse events) {
    return new Finding(
        kind,
        symptom,
        rules,
        places,
        message,
        help,
        Optional.of(build),
        region,
        share,
        chart,
        Optional.of(events),
        replayed);
  }

  /** The same finding in other words. */
  public Finding saying(String words) {
    return new Finding(
        kind, symptom, rules, places, words, help, witness, region, share, chart, course, replayed);
  }

  /** The same finding after Drools agreed on its witness. */
  public Finding confirmed() {
    return new Finding(
        kind, symptom, rules, places, message, help, witness, region, share, chart, course, true);
  }

  private double shareOrZero() {
    return share.map(Share::high).orElse(0.0);
  }
}
