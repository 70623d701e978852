package io.faultwright.analysis.quiz;

import io.faultwright.analysis.space.Diagrams;
import io.faultwright.model.Band;
import io.faultwright.model.Build;
import io.faultwright.model.Condition.AgainstLimits;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Limits;
import io.faultwright.model.LimitsTable;
import io.faultwright.model.Reading;
import io.faultwright.model.Rule;
import io.faultwright.model.Signed;
import io.faultwright.model.SignedKind;
import io.faultwright.model.Situation;
import io.faultwright.model.Sorted;
import io.faultwright.model.Value;
import io.faultwright.model.Version;
import io.faultwright.quiz.Choice;
import io.faultwright.quiz.Choice.OnSide;
import io.faultwright.quiz.Item;
import io.faultwright.quiz.Item.Explanation;
import io.faultwright.quiz.Item.Origin;
import io.faultwright.quiz.Item.Rating;
import io.faultwright.quiz.ItemKind;
import io.faultwright.quiz.Link;
import io.faultwright.quiz.NearMiss;
import io.faultwright.quiz.NearMiss.Why;
import io.faultwright.quiz.Shown;
import io.faultwright.quiz.Stem;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;

/** Items that ask where a reading lies against the limits of a machine. */
final class LimitsDrafts {
  private static final int TRIES = 40;

  private final Ground ground;
  private final KnowledgeBase kb;
  private final Assembly assembly;

  LimitsDrafts(Ground ground, Assembly assembly) {
    this.ground = ground;
    this.kb = ground.kb();
    this.assembly = assembly;
  }

  List<Draft> drafts() {
    List<Draft> drafts = new ArrayList<>();
    tables().forEach((reading, rules) -> ofTable(kb.limits().get(reading), rules, drafts));
    return drafts;
  }

  /** The readings that rules hold against limits, with those rules. */
  private SortedMap<String, SortedSet<String>> tables() {
    SortedMap<String, SortedSet<String>> tables = new TreeMap<>();
    for (Rule rule : ground.symptom().rules().values()) {
      rule.when()
          .tests()
          .filter(test -> test.pattern() instanceof AgainstLimits)
          .map(Test::subject)
          .filter(kb.limits()::containsKey)
          .forEach(id -> tables.computeIfAbsent(id, none -> new TreeSet<>()).add(rule.id()));
    }
    return tables;
  }

  /** One for each side on each machine whose limits differ from those before. */
  private void ofTable(LimitsTable table, SortedSet<String> rules, List<Draft> drafts) {
    Set<List<LimitsTable.Row>> seen = new HashSet<>();
    for (Build build : ground.builds()) {
      List<LimitsTable.Row> rows =
          table.rows().stream().filter(row -> build.satisfies(row.builds())).toList();
      boolean there =
          ground.has(build, table.reading())
              && table.drivers().stream().allMatch(driver -> ground.has(build, driver));
      if (there && !rows.isEmpty() && seen.add(rows)) {
        for (Side side : Side.values()) {
          drafts.add(new OnMachine(table, build, side, rules));
        }
      }
    }
  }

  /** A machine with its limits. */
  private final class OnMachine implements Draft {
    private final LimitsTable table;
    private final Build build;
    private final Side side;
    private final SortedSet<String> rules;
    private final Limits limits;
    private final Map<Build, Limits> others = new HashMap<>();

    OnMachine(LimitsTable table, Build build, Side side, SortedSet<String> rules) {
      this.table = table;
      this.build = build;
      this.side = side;
      this.rules = Sorted.set(rules);
      this.limits = Limits.of(table, build);
    }

    /**
     * What is read.
     *
     * @param drivers what the limits follow
     * @param value of the reading
     * @param near which wrong sides would be right elsewhere
     */
    private record Figures(
        List<BigFraction> drivers, BigFraction value, Map<Side, NearMiss> near) {}

    @Override
    public ItemKind kind() {
      return ItemKind.AGAINST_LIMITS;
    }

    @Override
    public String symptom() {
      return ground.symptom().id();
    }

    @Override
    public String theme() {
      return table.reading();
    }

    @Override
    public String key() {
      return String.join("|", kind().slug(), table.reading(), build.toString(), side.name());
    }

    @Override
    public Optional<Item> item(long seed, int participant) {
      return figures(Dice.of(key(), seed, participant)).map(this::assembled);
    }

    /** Figures with a near miss where some are found, else any. */
    private Optional<Figures> figures(Dice dice) {
      Optional<Figures> best = Optional.empty();
      for (int tries = 0; tries < TRIES; tries++) {
        Optional<Figures> drawn = draw(dice);
        if (drawn.isPresent() && rank(drawn) > rank(best)) {
          best = drawn;
        }
      }
      return best;
    }

    /** Another version tells more than another model, and that more than another ambient. */
    private static int rank(Optional<Figures> figures) {
      return figures
          .map(
              found ->
                  found.near().values().stream()
                          .mapToInt(near -> 4 - near.why().ordinal())
                          .max()
                          .orElse(0)
                      + 1)
          .orElse(0);
    }

    private Optional<Figures> draw(Dice dice) {
      List<BigFraction> drivers = new ArrayList<>();
      for (String driver : drivers()) {
        Optional<BigFraction> drawn = plausible(driver, Optional.empty()).draw(dice);
        if (drawn.isEmpty()) {
          return Optional.empty();
        }
        drivers.add(drawn.get());
      }
      return limits
          .at(drivers)
          .filter(band -> band.values(side).isPresent())
          .flatMap(band -> plausible(table.reading(), Optional.of(band)).draw(dice))
          .filter(value -> isSteady(drivers, value) && canBe(drivers, value))
          .map(value -> new Figures(drivers, value, near(drivers, value)));
    }

    /** Whether some situation of the complaint has these figures. */
    private boolean canBe(List<BigFraction> drivers, BigFraction value) {
      Situation shown = shown(drivers);
      Situation read = Ground.with(shown, table.reading(), new Value.Number(value));
      boolean derived = kb.readings().get(table.reading()).derived().isPresent();
      return ground.agreeing(derived ? shown : read) != Diagrams.NONE;
    }

    private Situation shown(List<BigFraction> drivers) {
      SortedMap<String, Value> readings = new TreeMap<>();
      for (int i = 0; i < drivers.size(); i++) {
        readings.put(drivers().get(i), new Value.Number(drivers.get(i)));
      }
      return new Situation(build.facts(), readings);
    }

    private List<String> drivers() {
      return limits.followsDrivers() ? table.drivers() : List.of();
    }

    private Plausible plausible(String reading, Optional<Band> band) {
      Domain.Measured domain = (Domain.Measured) kb.readings().get(reading).domain();
      return Plausible.of(domain, domain.range(), band, band.map(known -> side));
    }

    /** Whether the side stays the same whatever the instruments mean. */
    private boolean isSteady(List<BigFraction> drivers, BigFraction value) {
      BigFraction off = margin(table.reading(), value);
      for (int corner = 0; corner < 1 << drivers.size(); corner++) {
        List<BigFraction> shifted = new ArrayList<>();
        for (int i = 0; i < drivers.size(); i++) {
          BigFraction by = margin(drivers().get(i), drivers.get(i));
          shifted.add(drivers.get(i).add((corner >> i & 1) == 1 ? by : by.negate()));
        }
        Optional<Band> band = limits.at(shifted);
        if (band.isEmpty()
            || band.get().side(value.add(off)) != side
            || band.get().side(value.subtract(off)) != side) {
          return false;
        }
      }
      return limits.at(drivers).map(band -> band.side(value)).equals(Optional.of(side));
    }

    /** What the instrument cannot tell, at least a step of its display. */
    private BigFraction margin(String reading, BigFraction value) {
      Reading known = kb.readings().get(reading);
      Domain.Measured domain = (Domain.Measured) known.domain();
      return known.tolerance(value).or(domain::resolution).orElse(BigFraction.ZERO);
    }

    private Map<Side, NearMiss> near(List<BigFraction> drivers, BigFraction value) {
      Map<Side, NearMiss> near = new EnumMap<>(Side.class);
      for (boolean same : List.of(true, false)) {
        for (Build other : kb.equipment().builds()) {
          boolean sameModel = other.model().id().equals(build.model().id());
          if (sameModel == same && ground.has(other, table.reading())) {
            others
                .computeIfAbsent(other, one -> Limits.of(table, one))
                .at(drivers)
                .ifPresent(band -> near.putIfAbsent(band.side(value), otherMachine(other, same)));
          }
        }
      }
      for (int i = 0; i < drivers.size(); i++) {
        elsewhere(drivers, i, value, near);
      }
      near.remove(side);
      return near;
    }

    private NearMiss otherMachine(Build other, boolean sameModel) {
      return sameModel
          ? new NearMiss(Why.OTHER_SOFTWARE, other.software().map(Version::text).orElse(""))
          : new NearMiss(Why.OTHER_MODEL, other.model().id());
    }

    private void elsewhere(
        List<BigFraction> drivers, int driver, BigFraction value, Map<Side, NearMiss> near) {
      String id = drivers().get(driver);
      Plausible plausible = plausible(id, Optional.empty());
      for (BigFraction end : List.of(plausible.low(), plausible.high())) {
        List<BigFraction> moved = new ArrayList<>(drivers);
        moved.set(driver, end);
        limits
            .at(moved)
            .ifPresent(
                band -> near.putIfAbsent(band.side(value), new NearMiss(Why.OTHER_DRIVER, id)));
      }
    }

    private Item assembled(Figures figures) {
      Signed footing = new Signed(SignedKind.LIMITS, table.reading());
      Shown shown = new Shown(shown(figures.drivers()), drivers());
      List<Choice> choices = new ArrayList<>();
      for (Side one : Side.values()) {
        choices.add(
            new Choice(new OnSide(one), one == side, Optional.ofNullable(figures.near().get(one))));
      }
      List<String> deciding = new ArrayList<>(drivers());
      deciding.add(table.reading());
      return new Item(
          id(),
          new Stem.AgainstLimits(shown, table.reading(), new Value.Number(figures.value())),
          choices,
          new Origin(symptom(), rules, footing, assembly.meaning(footing)),
          new Explanation(deciding, Link.reading(table.reading())),
          Rating.of(1 + 2 * figures.drivers().size() + 2 * figures.near().size()));
    }
  }
}
