package io.faultwright.analysis.space;

import io.faultwright.model.Band;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Facet;
import io.faultwright.model.Reading;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/** Which cell combinations hold a real situation: readings exist, and limits lie where they lie. */
final class Consistency {
  private final Space space;
  private final Diagrams diagrams;
  private final SortedSet<String> limited;
  private final List<Coupling> couplings;

  Consistency(Space space, SortedSet<String> limited, List<Coupling> couplings) {
    this.space = space;
    this.diagrams = space.diagrams();
    this.limited = limited;
    this.couplings = couplings;
  }

  int diagram() {
    int diagram = Diagrams.ALL;
    for (Axis axis : space.axes()) {
      if (axis.subject() instanceof Axis.OfReading of) {
        diagram = diagrams.and(diagram, existence(axis, of.reading()));
      }
    }
    for (String reading : limited) {
      diagram = diagrams.and(diagram, sides(reading));
    }
    for (Coupling coupling : couplings) {
      diagram = diagrams.and(diagram, coupled(coupling).diagram());
    }
    return diagram;
  }

  /** Where separators of groups have to be cut. */
  SortedMap<String, SortedSet<Cut>> separatingCuts() {
    SortedMap<String, SortedSet<Cut>> cuts = new TreeMap<>();
    for (Coupling coupling : couplings) {
      coupling
          .separator()
          .ifPresent(
              reading ->
                  cuts.computeIfAbsent(reading, key -> new TreeSet<>())
                      .addAll(coupled(coupling).cuts(reading)));
    }
    return cuts;
  }

  /** Which cells go together in a group of readings that hang together. */
  private CouplingDiagram coupled(Coupling coupling) {
    SortedSet<String> judged = new TreeSet<>(coupling.readings());
    judged.retainAll(limited);
    int start = Diagrams.ALL;
    for (String reading : coupling.readings()) {
      Axis axis = space.axis(new Axis.OfReading(reading));
      start = diagrams.and(start, diagrams.and(existence(axis, reading), computed(reading)));
    }
    for (String reading : judged) {
      start = diagrams.and(start, sides(reading));
    }
    return new CouplingDiagram(space, coupling, judged, start);
  }

  /**
   * A derived reading has a value where all its operands have one, unless a curve ends before, and
   * else cannot be taken.
   */
  private int computed(String reading) {
    int known = Diagrams.ALL;
    for (String operand : space.knowledge().readings().get(reading).operands()) {
      known = diagrams.and(known, having(operand, Cell.Stretch.class));
    }
    int without = having(reading, Cell.NotTaken.class);
    int notTaken = space.mayLeaveCurves(reading) ? without : diagrams.minus(without, known);
    int absent = having(reading, Cell.Absent.class);
    int value = diagrams.and(known, having(reading, Cell.Stretch.class));
    return known == Diagrams.ALL ? Diagrams.ALL : diagrams.or(value, diagrams.or(notTaken, absent));
  }

  private int having(String reading, Class<? extends Cell> kind) {
    Axis axis = space.axis(new Axis.OfReading(reading));
    return space.literal(axis.subject(), axis.where(kind::isInstance));
  }

  /** A reading is absent exactly on the equipment that does not have it. */
  private int existence(Axis axis, String reading) {
    Reading definition = space.knowledge().readings().get(reading);
    BitSet absent = axis.where(cell -> cell instanceof Cell.Absent);
    if (absent.isEmpty()) {
      return Diagrams.ALL;
    }
    BitSet having =
        equipment()
            .where(cell -> ((Cell.Builds) cell).representative().satisfies(definition.applies()));
    int has = space.literal(new Axis.OfEquipment(), having);
    int missing = space.literal(axis.subject(), absent);
    return diagrams.or(diagrams.minus(has, missing), diagrams.minus(missing, has));
  }

  private Axis equipment() {
    return space.axis(new Axis.OfEquipment());
  }

  /** For every equipment and driver cell: which side goes with which piece of the reading. */
  private int sides(String reading) {
    List<Cell> builds = equipment().cells();
    int all = Diagrams.NONE;
    for (int cell = 0; cell < builds.size(); cell++) {
      LimitsCurve curve = space.curve(reading, ((Cell.Builds) builds.get(cell)).representative());
      BitSet one = new BitSet();
      one.set(cell);
      int here = space.literal(new Axis.OfEquipment(), one);
      all = diagrams.or(all, diagrams.and(here, alongDrivers(reading, curve, List.of())));
    }
    return all;
  }

  /**
   * What goes together once some of the drivers lie in given cells.
   *
   * @param chosen a cell of each of the first drivers
   */
  private int alongDrivers(String reading, LimitsCurve curve, List<Cell> chosen) {
    List<String> drivers = space.knowledge().limits().get(reading).drivers();
    if (chosen.size() == drivers.size()) {
      return pieces(reading, judged(curve, chosen));
    }
    Axis axis = space.axis(new Axis.OfReading(drivers.get(chosen.size())));
    Map<Integer, BitSet> cellsByResult = new LinkedHashMap<>();
    for (int cell = 0; cell < axis.cells().size(); cell++) {
      List<Cell> further = new ArrayList<>(chosen);
      further.add(axis.cells().get(cell));
      int result = alongDrivers(reading, curve, further);
      cellsByResult.computeIfAbsent(result, key -> new BitSet()).set(cell);
    }
    int all = Diagrams.NONE;
    for (Map.Entry<Integer, BitSet> entry : cellsByResult.entrySet()) {
      int here = space.literal(axis.subject(), entry.getValue());
      all = diagrams.or(all, diagrams.and(here, entry.getKey()));
    }
    return all;
  }

  /** From a piece of the limited reading to the cells of its limits that go with it. */
  private interface Judged {
    Predicate<Cell> cells(Cell.Stretch piece);
  }

  private static Judged judged(LimitsCurve curve, List<Cell> drivers) {
    for (Class<? extends Cell> other : List.of(Cell.Absent.class, Cell.NotTaken.class)) {
      if (drivers.stream().anyMatch(other::isInstance)) {
        return piece -> other::isInstance;
      }
    }
    List<BigFraction> inside =
        drivers.stream()
            .map(driver -> Stretches.middle(((Cell.Stretch) driver).interval()))
            .toList();
    return curve.slopesBothWays() ? mayBe(curve.facets(inside)) : judged(curve.at(inside));
  }

  /** Where limits slope along two drivers, all that some piece of them allows. */
  private static Judged mayBe(List<Facet> facets) {
    boolean some = facets.stream().anyMatch(facet -> facet.figures().isPresent());
    boolean none = facets.stream().anyMatch(facet -> facet.figures().isEmpty());
    return piece ->
        cell -> cell instanceof Cell.NoFigure && none || cell instanceof Cell.SideOf && some;
  }

  private static Judged judged(Optional<Band> band) {
    return piece ->
        band.isEmpty()
            ? cell -> cell instanceof Cell.NoFigure
            : cell -> cell instanceof Cell.SideOf at && reaches(piece, band.get(), at.side());
  }

  private int pieces(String reading, Judged judged) {
    Axis axis = space.axis(new Axis.OfReading(reading));
    Axis sides = space.axis(new Axis.OfSide(reading));
    int all = Diagrams.NONE;
    for (int cell = 0; cell < axis.cells().size(); cell++) {
      BitSet one = new BitSet();
      one.set(cell);
      BitSet allowed = sides.where(goesWith(axis.cells().get(cell), judged));
      int here = space.literal(axis.subject(), one);
      all = diagrams.or(all, diagrams.and(here, space.literal(sides.subject(), allowed)));
    }
    return all;
  }

  private static Predicate<Cell> goesWith(Cell reading, Judged judged) {
    return reading instanceof Cell.Stretch stretch
        ? judged.cells(stretch)
        : reading.getClass()::isInstance;
  }

  private static boolean reaches(Cell.Stretch stretch, Band band, Side side) {
    return band.values(side)
        .flatMap(values -> Stretches.intersection(values, stretch.interval()))
        .isPresent();
  }
}
