package io.faultwright.measure;

import java.io.StringReader;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.kie.api.io.ResourceType;
import org.kie.dmn.api.core.DMNModel;
import org.kie.dmn.core.internal.utils.DMNRuntimeBuilder;
import org.kie.dmn.feel.runtime.Range.RangeBoundary;
import org.kie.dmn.validation.DMNValidator.Validation;
import org.kie.dmn.validation.dtanalysis.DMNDTAnalyser;
import org.kie.dmn.validation.dtanalysis.model.Bound;
import org.kie.dmn.validation.dtanalysis.model.DTAnalysis;
import org.kie.dmn.validation.dtanalysis.model.Hyperrectangle;
import org.kie.dmn.validation.dtanalysis.model.Interval;
import org.kie.dmn.validation.dtanalysis.model.Overlap;
import org.kie.internal.io.ResourceFactory;

/**
 * The analysis of decision tables in kie-dmn-validation: gaps and overlaps of a table.
 *
 * <p>It writes a gap among the values of a choice as a stretch of their list: {@code [v1 .. v3)} is
 * v1 and v2, {@code [v3 .. v3]} the last value. Of such gaps it leaves some out, of gaps among
 * numbers none: so choices can be given to it as stretches of numbers as well.
 */
final class DmnReference {
  private final Table table;
  private final DMNModel model;

  private DmnReference(Table table, boolean words) {
    this.table = table;
    String text = new DmnXml(words).of(table);
    var resource = ResourceFactory.newReaderResource(new StringReader(text), "UTF-8");
    resource.setResourceType(ResourceType.DMN);
    resource.setSourcePath("generated.dmn");
    model =
        DMNRuntimeBuilder.fromDefaults()
            .buildConfiguration()
            .fromResources(List.of(resource))
            .getOrElseThrow(IllegalStateException::new)
            .getModels()
            .get(0);
  }

  /** Choices as stretches of numbers. */
  static DmnReference inNumbers(Table table) {
    return new DmnReference(table, false);
  }

  /** Choices as texts. */
  static DmnReference inWords(Table table) {
    return new DmnReference(table, true);
  }

  /** The analysis alone, of the model that was read before. */
  DTAnalysis analyse() {
    DTAnalysis analysis =
        new DMNDTAnalyser(List.of())
            .analyse(model, Set.of(Validation.ANALYZE_DECISION_TABLE))
            .get(0);
    if (analysis.isError()) {
      throw new IllegalStateException("the reference gave up: " + analysis.asDMNMessages());
    }
    return analysis;
  }

  /** What the analysis says, in the table's own terms. */
  Judgement judgement() {
    return judgement(analyse());
  }

  /** What an analysis of this table says, in the table's own terms. */
  Judgement judgement(DTAnalysis analysis) {
    List<List<Part>> gaps =
        analysis.getGaps().stream().map(gap -> box(table.columns(), gap)).toList();
    SortedSet<String> overlaps = new TreeSet<>();
    for (Overlap overlap : analysis.getOverlaps()) {
      SortedSet<String> rules = new TreeSet<>();
      overlap.getRules().forEach(rule -> rules.add(table.rows().get(rule - 1).id()));
      overlaps.addAll(Judgement.pairs(rules));
    }
    return new Judgement(gaps, overlaps);
  }

  /** A box that names fewer columns than the table has leaves the last ones whole. */
  private static List<Part> box(List<Column> columns, Hyperrectangle gap) {
    List<Part> box = new ArrayList<>(Table.everything(columns));
    for (int column = 0; column < gap.getEdges().size(); column++) {
      box.set(column, part(columns.get(column), gap.getEdges().get(column)));
    }
    return box;
  }

  private static Part part(Column column, Interval edge) {
    boolean fromIncluded = edge.getLowerBound().getBoundaryType() == RangeBoundary.CLOSED;
    boolean toIncluded = edge.getUpperBound().getBoundaryType() == RangeBoundary.CLOSED;
    if (column instanceof Column.Choice choice) {
      return edge.getLowerBound().getValue() instanceof String
          ? named(choice, edge, fromIncluded, toIncluded)
          : Values.closed(number(edge.getLowerBound()), number(edge.getUpperBound()) - 1);
    }
    return new Span(
        2 * number(edge.getLowerBound()) + (fromIncluded ? 0 : 1),
        2 * number(edge.getUpperBound()) + (toIncluded ? 1 : 0));
  }

  private static Part named(
      Column.Choice choice, Interval edge, boolean fromIncluded, boolean toIncluded) {
    int from = choice.values().indexOf(edge.getLowerBound().getValue());
    int to = choice.values().indexOf(edge.getUpperBound().getValue());
    return Values.closed(fromIncluded ? from : from + 1, toIncluded ? to : to - 1);
  }

  private static int number(Bound<?> bound) {
    return ((BigDecimal) (Comparable<?>) bound.getValue()).intValueExact();
  }
}
