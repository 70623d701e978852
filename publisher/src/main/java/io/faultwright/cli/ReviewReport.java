package io.faultwright.cli;

import io.faultwright.adequacy.Measured;
import io.faultwright.flow.ChartWalk;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.page.CasesSheets;
import io.faultwright.page.ReviewSheets;
import io.faultwright.page.ReviewSource;
import io.faultwright.pipeline.CaseMeasure;
import io.faultwright.pipeline.Checked;
import io.faultwright.pipeline.LastChanges;
import io.faultwright.pipeline.Reviewing;
import io.faultwright.pipeline.SignOffCheck;
import io.faultwright.pipeline.Stop;
import io.faultwright.pipeline.Watch;
import io.faultwright.plain.PlainCheck;
import io.faultwright.render.html.ReviewHtml;
import io.faultwright.report.SymptomSummary;
import io.faultwright.report.SymptomSummary.Proof;
import io.faultwright.review.SymptomReview;
import io.faultwright.revision.History;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The report for reviewers as files.
 *
 * @param files by path
 * @param whole whether nothing was left out
 */
record ReviewReport(SortedMap<String, byte[]> files, boolean whole) {
  /**
   * Makes the report.
   *
   * @param kb what was checked, under the number and date that the report shows
   * @param history in which last changes are looked up
   * @param mistakes whether mistakes are put into rules and limits, which takes longest
   * @param stop when the rest is left out
   */
  static ReviewReport of(
      KnowledgeBase kb,
      Checked checked,
      SignOffCheck signed,
      History history,
      boolean mistakes,
      Stop stop,
      Watch watch) {
    LastChanges changes = new LastChanges(history, kb, stop);
    List<SymptomReview> symptoms =
        new Reviewing(kb, changes, checked.report().findings(), stop, watch).all();
    CaseMeasure.Options options = new CaseMeasure.Options(Optional.empty(), mistakes, false);
    Measured measured = new CaseMeasure(options, ChartWalk::goals, stop, watch).measure(kb);
    ReviewSource source =
        new ReviewSource(
            kb, checked.report().findings(), proofs(checked), symptoms, signed.states(), plain(kb));
    return new ReviewReport(
        new ReviewHtml().files(ReviewSheets.of(source), CasesSheets.of(kb, measured)),
        measured.done().whole());
  }

  private static ReviewSource.Plain plain(KnowledgeBase kb) {
    PlainCheck check = new PlainCheck(kb);
    return new ReviewSource.Plain(
        check.applies(), check.count(), PlainCheck.MOST_WORDS, check.hints());
  }

  private static SortedMap<String, String> proofs(Checked checked) {
    SortedMap<String, String> proofs = new TreeMap<>();
    checked.report().symptoms().forEach(one -> proofs.put(one.id(), proof(one)));
    return proofs;
  }

  private static String proof(SymptomSummary summary) {
    if (summary.proof() == Proof.NOT_COMPUTED) {
      return "not looked at in time";
    }
    if (summary.clean()) {
      return "proved to have no gap and no contradiction";
    }
    return part(summary.gapFree(), "gap")
        + ", "
        + part(summary.contradictionFree(), "contradiction");
  }

  private static String part(Optional<Boolean> free, String what) {
    return free.map(proved -> proved ? "proved to have no " + what : "has a " + what)
        .orElse("not known whether it has a " + what);
  }
}
