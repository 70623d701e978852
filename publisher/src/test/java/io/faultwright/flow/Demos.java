package io.faultwright.flow;

import io.faultwright.analysis.space.SymptomSpace;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.Handbook;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.ShownUnits;
import io.faultwright.model.Symptom;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderReader;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Knowledge bases for tests: the two demonstration handbooks, and whatever a test writes. */
public final class Demos {
  private static final String HANDBOOK =
      """
      handbook:
        title: Test handbook
        maker: Brantmoor Cold
        revision: "1"
        date: 2026-03-02
        language: en
        disclaimer: For tests only.
        hotline: +00 000 000
      """;

  private static final List<KnowledgeBase> BOTH =
      List.of(read("walk-in-freezers"), read("pass-through-dishwashers"));

  private static final Map<ShownUnits, List<KnowledgeBase>> SHOWN = new EnumMap<>(ShownUnits.class);

  private static final Map<Handbook, Map<String, List<ScopedChart>>> CHARTS = new HashMap<>();

  private Demos() {}

  /** The demonstration handbooks. */
  public static List<KnowledgeBase> all() {
    return BOTH;
  }

  /** The demonstration handbooks, published in given units. */
  public static List<KnowledgeBase> shownIn(ShownUnits units) {
    return SHOWN.computeIfAbsent(
        units, shown -> BOTH.stream().map(kb -> shownIn(kb, shown)).toList());
  }

  /** The charts of a symptom of one of these knowledge bases, drawn up once for all tests. */
  public static List<ScopedChart> charts(KnowledgeBase kb, Symptom symptom) {
    if (!CHARTS.containsKey(kb.handbook())
        || !CHARTS.get(kb.handbook()).containsKey(symptom.id())) {
      drawUp(symptom.id(), shown(kb));
    }
    return CHARTS.get(kb.handbook()).get(symptom.id());
  }

  /** The same demonstration handbook in all units, as it is written first. */
  private static List<KnowledgeBase> shown(KnowledgeBase kb) {
    int which = BOTH.get(0).handbook().title().equals(kb.handbook().title()) ? 0 : 1;
    return Stream.concat(
            Stream.of(BOTH.get(which)),
            Stream.of(ShownUnits.values()).map(units -> shownIn(units).get(which)))
        .toList();
  }

  /** The order of the checks is worked out once, as for the languages of a handbook. */
  private static void drawUp(String symptom, List<KnowledgeBase> shown) {
    KnowledgeBase written = shown.get(0);
    SymptomSpace space = SymptomSpace.of(written, written.symptoms().get(symptom));
    List<List<ScopedChart>> charts = ChartBuilder.charts(space, shown);
    for (int i = 0; i < shown.size(); i++) {
      CHARTS
          .computeIfAbsent(shown.get(i).handbook(), none -> new TreeMap<>())
          .put(symptom, charts.get(i));
    }
  }

  private static KnowledgeBase shownIn(KnowledgeBase kb, ShownUnits units) {
    Handbook as = kb.handbook();
    Handbook handbook =
        new Handbook(
            as.place(),
            as.title(),
            as.maker(),
            as.revision(),
            as.date(),
            as.language(),
            as.disclaimer(),
            as.hotline(),
            as.base(),
            as.start(),
            as.notes(),
            Optional.of(units),
            as.weights(),
            as.translatedTo(),
            as.signOffs());
    return new KnowledgeBase(
        handbook,
        kb.equipment(),
        kb.readings(),
        kb.limits(),
        kb.faults(),
        kb.symptoms(),
        kb.nevers(),
        kb.cases(),
        kb.cautions(),
        kb.parts(),
        kb.guides(),
        kb.setUps(),
        kb.charts(),
        kb.sequences(),
        kb.wordbook());
  }

  private static KnowledgeBase read(String name) {
    return Resolver.resolve(FolderReader.read(Path.of("..", "rules", name)));
  }

  /** A knowledge base from YAML without a {@code handbook}. */
  static KnowledgeBase of(String yaml) {
    Sources sources = new Sources(List.of(SourceFile.of("handbook.yaml", HANDBOOK + yaml)));
    try {
      return Resolver.resolve(sources);
    } catch (Unreadable unreadable) {
      throw new AssertionError(unreadable.problems().toString(), unreadable);
    }
  }
}
