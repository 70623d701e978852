package io.faultwright.report;

import io.faultwright.adequacy.Coverage;
import io.faultwright.adequacy.Criterion;
import io.faultwright.adequacy.GoalStatus;
import io.faultwright.adequacy.Measured;
import io.faultwright.adequacy.Tally;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.source.Place;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** How good a set of cases is, for people. */
public final class CasesText {
  private static final String NOTHING = "-";

  private final KnowledgeBase kb;
  private final Ink ink;
  private final Listing listing;

  /**
   * @param everything whether all that is open is listed, or the first few of each kind
   */
  public CasesText(KnowledgeBase kb, Ink ink, boolean everything) {
    this.kb = kb;
    this.ink = ink;
    this.listing = new Listing(everything);
  }

  /** What is shown, on which equipment, what is open, and which mistakes went unnoticed. */
  public String write(Measured measured) {
    return ink.strong(Columns.printable(measured.handbook()))
        + "\n"
        + counts(measured.counts())
        + "\n"
        + ink.strong("Shown of what can be shown")
        + "\n\n"
        + symptoms(measured)
        + "\n"
        + new BuildsTable(ink).of(measured)
        + measured.symptoms().stream().map(this::open).collect(Collectors.joining())
        + new MistakesText(kb, ink, listing).of(measured)
        + verdict(measured);
  }

  private String counts(Measured.Counts counts) {
    String failed = counts.failed() + " failed";
    return Counts.of(counts.counted(), "case")
        + " measured, "
        + (counts.failed() > 0 ? ink.bad(failed) : failed)
        + (counts.unconfirmed() > 0 ? ", " + counts.unconfirmed() + " not confirmed" : "")
        + (counts.failed() + counts.unconfirmed() > 0 ? "; only those that pass are measured" : "")
        + "\n";
  }

  private static String symptoms(Measured measured) {
    List<Criterion> criteria = List.copyOf(measured.tallies().keySet());
    AlignedRows rows = new AlignedRows();
    rows.add(
        Stream.concat(Stream.of("", "cases"), criteria.stream().map(Criterion::word)).toList());
    int cases = 0;
    for (Coverage symptom : measured.symptoms()) {
      rows.add(row(symptom.symptom(), symptom.cases(), criteria, symptom.tallies()));
      cases += symptom.cases();
    }
    rows.add(row("all", cases, criteria, measured.tallies()));
    return rows.text();
  }

  private static List<String> row(
      String head, int cases, List<Criterion> criteria, Map<Criterion, Tally> tallies) {
    return Stream.concat(
            Stream.of(head, Integer.toString(cases)),
            criteria.stream()
                .map(one -> Optional.ofNullable(tallies.get(one)))
                .map(tally -> tally.map(CasesText::tally).orElse(NOTHING)))
        .toList();
  }

  static String tally(Tally tally) {
    return tally.shown() + "/" + tally.of();
  }

  static String line(Place place) {
    return place.file() + ":" + place.line();
  }

  private String open(Coverage symptom) {
    Map<Criterion, List<GoalStatus>> open =
        symptom
            .open()
            .sorted(Comparator.comparing(goal -> goal.goal().place()))
            .collect(Collectors.groupingBy(goal -> goal.goal().criterion()));
    return open.isEmpty()
        ? ""
        : ink.strong("Open in " + symptom.symptom())
            + "\n\n"
            + Stream.of(Criterion.values())
                .filter(open::containsKey)
                .map(one -> open(one, open.get(one)))
                .collect(Collectors.joining())
            + "\n";
  }

  private String open(Criterion criterion, List<GoalStatus> open) {
    int shown =
        criterion == Criterion.PAIRS ? listing.ofMany(open.size()) : listing.few(open.size());
    return "  "
        + criterion.title()
        + ": "
        + open.size()
        + " open\n"
        + IntStream.range(0, shown).mapToObj(i -> goal(open.get(i))).collect(Collectors.joining())
        + (shown > 0 ? listing.rest(open.size() - shown) : "");
  }

  private String goal(GoalStatus status) {
    return "    "
        + Columns.printable(status.goal().wordsInRule())
        + "  "
        + ink.frame(line(status.goal().place()))
        + "\n";
  }

  private String verdict(Measured measured) {
    String done =
        measured.done().pieces() + " of " + measured.done().of() + " pieces of work done\n";
    return measured.done().whole() ? "" : ink.uneasy("stopped") + ": " + done;
  }
}
