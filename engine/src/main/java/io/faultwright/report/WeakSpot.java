package io.faultwright.report;

import io.faultwright.grading.ItemReport;
import io.faultwright.grading.Score;
import io.faultwright.grading.Share;
import io.faultwright.handin.Entry;
import io.faultwright.handin.Grades;
import io.faultwright.handin.IssuedQuiz.Item;
import io.faultwright.quiz.Link;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * How a symptom is answered by all.
 *
 * @param symptom id
 * @param share of the answers that are right
 * @param pages to improve, the page of the symptom first; none where the pass mark is reached
 */
record WeakSpot(String symptom, Share share, List<String> pages) {
  /** Every symptom, the one that is answered wrong most first. */
  static List<WeakSpot> of(Grades grades) {
    List<WeakSpot> spots = new ArrayList<>();
    for (String symptom : grades.quiz().symptoms().keySet()) {
      int right = 0;
      int all = 0;
      for (Entry entry : grades.entries()) {
        Score score = entry.score();
        Share share = score.topics().getOrDefault(symptom, new Share(0, 0));
        right += share.right();
        all += share.of();
      }
      if (all > 0) {
        Share share = new Share(right, all);
        spots.add(new WeakSpot(symptom, share, pages(grades, symptom, share)));
      }
    }
    spots.sort(Comparator.comparingDouble((WeakSpot spot) -> spot.share().share()));
    return spots;
  }

  /** The page of the symptom, then those of its items below the pass mark, the hardest first. */
  private static List<String> pages(Grades grades, String symptom, Share share) {
    Set<String> pages = new LinkedHashSet<>();
    if (!share.reaches(grades.quiz().passMark())) {
      pages.add(Link.symptom(symptom).toString());
    }
    List<Item> items = grades.quiz().items();
    List<ItemReport> reports = grades.report().orElseThrow().items();
    reports.stream()
        .filter(report -> report.topic().equals(symptom))
        .filter(report -> 100 * report.difficulty() < grades.quiz().passMark())
        .sorted(Comparator.comparingDouble(ItemReport::difficulty))
        .map(report -> items.get(reports.indexOf(report)).page())
        .forEach(pages::add);
    return List.copyOf(pages);
  }
}
