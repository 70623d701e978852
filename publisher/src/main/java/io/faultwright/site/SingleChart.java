package io.faultwright.site;

import io.faultwright.analysis.space.Deadline;
import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.flow.CardBuilder;
import io.faultwright.flow.ChartBuilder;
import io.faultwright.flow.Imprint;
import io.faultwright.flow.ScopedChart;
import io.faultwright.layout.CardLayout;
import io.faultwright.layout.ChartLayout;
import io.faultwright.layout.ChartPage;
import io.faultwright.layout.Paper;
import io.faultwright.model.Build;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Symptom;
import io.faultwright.model.Version;
import io.faultwright.wording.Wording;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * The charts or the card of one symptom, for all equipment it applies to or for some of it.
 *
 * @param symptom its id
 * @param model id of the only model it is for, if any
 * @param software the only version it is for, if any
 */
public record SingleChart(String symptom, Optional<String> model, Optional<String> software) {
  /** The pages of charts of this symptom. */
  public List<ChartPage> pages(
      KnowledgeBase kb, List<ScopedChart> charts, boolean draft, Paper paper) {
    ChartLayout layout = new ChartLayout(Imprint.of(kb.handbook(), draft), paper);
    Optional<String> address = ChartDrawings.address(kb, kb.symptoms().get(symptom));
    return charts.stream().flatMap(chart -> layout.pages(chart.chart(), address).stream()).toList();
  }

  /**
   * The symptom, once what is asked for is known to exist.
   *
   * @throws Unreadable where it does not
   */
  public Symptom found(KnowledgeBase kb) {
    require(symptom, kb.symptoms().keySet(), "symptom");
    model.ifPresent(id -> require(id, kb.equipment().models().keySet(), "model"));
    Symptom found = kb.symptoms().get(symptom);
    requireBuilds(kb, found);
    return found;
  }

  private static void require(String id, Collection<String> known, String noun) {
    if (!known.contains(id)) {
      throw problem("there is no " + noun + " `" + id + "`", NearMatch.help(id, known));
    }
  }

  private void requireBuilds(KnowledgeBase kb, Symptom found) {
    List<Build> published = asked(kb.equipment().builds());
    if (published.isEmpty()) {
      List<String> versions = versions(kb);
      String whose = model.map(id -> " of `" + id + "`").orElse("");
      throw problem(
          "there is no software `" + software.orElse("") + "`" + whose,
          NearMatch.help(software.orElse(""), versions));
    }
    if (asked(SymptomSpace.builds(kb, found)).isEmpty()) {
      throw problem(
          "`" + symptom + "` does not apply to " + words(),
          "it applies to: " + new Wording(kb).condition(found.applies()));
    }
  }

  private List<String> versions(KnowledgeBase kb) {
    return kb.equipment().builds().stream()
        .filter(build -> model.map(build.model().id()::equals).orElse(true))
        .flatMap(build -> build.software().stream())
        .map(Version::text)
        .distinct()
        .toList();
  }

  private String words() {
    return model.map(id -> "`" + id + "`").orElse("any model")
        + software.map(version -> " with software `" + version + "`").orElse("");
  }

  private static Unreadable problem(String message, String help) {
    return new Unreadable(List.of(new Problem(List.of(), message, help)));
  }

  private List<Build> asked(List<Build> builds) {
    return builds.stream()
        .filter(build -> model.map(build.model().id()::equals).orElse(true))
        .filter(build -> software.map(version -> isOf(build, version)).orElse(true))
        .toList();
  }

  private static boolean isOf(Build build, String version) {
    return Version.isVersion(version) && build.software().equals(Optional.of(new Version(version)));
  }

  private SymptomSpace space(KnowledgeBase kb, Symptom found) {
    List<Build> builds = asked(SymptomSpace.builds(kb, found));
    return SymptomSpace.where(kb, found, builds, List.of(), Deadline.NEVER);
  }

  /**
   * The charts, in a fixed order.
   *
   * @throws Unreadable as {@link #found}
   */
  public List<ScopedChart> charts(KnowledgeBase kb) {
    return ChartBuilder.charts(space(kb, found(kb)));
  }

  /**
   * The pocket card, four to a sheet where that is asked for.
   *
   * @throws Unreadable as {@link #found}
   */
  public ChartPage card(KnowledgeBase kb, boolean draft, Paper paper, boolean fourUp) {
    Symptom found = found(kb);
    String scope = Wording.published(kb).builds(asked(SymptomSpace.builds(kb, found)));
    CardLayout layout = new CardLayout(Imprint.of(kb.handbook(), draft), paper);
    ChartPage card = layout.card(CardBuilder.build(space(kb, found), scope));
    return fourUp ? layout.fourUp(card) : card;
  }
}
