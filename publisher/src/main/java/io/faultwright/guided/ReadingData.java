package io.faultwright.guided;

import io.faultwright.json.Fields;
import io.faultwright.model.Accuracy;
import io.faultwright.model.Bend;
import io.faultwright.model.Curve;
import io.faultwright.model.Derived;
import io.faultwright.model.Domain;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Reading;
import io.faultwright.model.SetUp;
import io.faultwright.page.SitePaths;
import io.faultwright.page.Target;
import io.faultwright.page.Target.Kind;
import io.faultwright.quantity.Interval;
import io.faultwright.quantity.Line;
import io.faultwright.quantity.Unit;
import io.faultwright.quantity.Units;
import io.faultwright.wording.Wording;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Readings for the page: what is asked, what may be answered, and how it is taken. */
final class ReadingData {
  private final KnowledgeBase kb;
  private final Wording wording;
  private final BuildNumbers builds;

  ReadingData(KnowledgeBase kb, Wording wording, BuildNumbers builds) {
    this.kb = kb;
    this.wording = wording;
    this.builds = builds;
  }

  Fields of(Reading reading) {
    Fields fields =
        new Fields()
            .put("title", reading.title())
            .put("ask", reading.ask())
            .putIfAny("builds", builds.unlessAll(reading.applies()));
    reading
        .domain()
        .match(
            measured -> measured(fields, measured),
            choice ->
                fields.put(
                    "values",
                    choice.values().stream().map(value -> value(reading, value)).toList()));
    taking(fields, reading);
    return fields
        .put("page", SitePaths.file(new Target(Kind.READING, reading.id())))
        .putIfAny("after", reading.after())
        .putIfAny("assumed", reading.assumed().map(Conditions::of))
        .putIfAny("computation", wording.computation(reading.id()))
        .putIfAny("derived", reading.derived().map(this::derived));
  }

  private List<String> value(Reading reading, NamedValue value) {
    return List.of(value.id(), wording.value(reading.id(), value.id()));
  }

  private Fields measured(Fields fields, Domain.Measured measured) {
    return fields
        .put("unit", measured.unit().symbol())
        .put("range", range(measured.range()))
        .putIfAny("resolution", measured.resolution().map(Rationals::text))
        .put("units", units(measured.unit()).map(this::unit).toList());
  }

  private static List<String> range(Interval range) {
    return Stream.of(range.low(), range.high())
        .flatMap(Optional::stream)
        .map(end -> Rationals.text(end.value()))
        .toList();
  }

  /** Its own, its counterpart in the other system, then all others for the same quantity. */
  private static Stream<Unit> units(Unit own) {
    Stream<Unit> others =
        Units.symbols().stream()
            .map(Units::find)
            .flatMap(Optional::stream)
            .filter(unit -> unit.dimension() == own.dimension());
    return Stream.of(Stream.of(own), Units.counterpart(own).stream(), others)
        .flatMap(units -> units)
        .distinct();
  }

  private Fields unit(Unit unit) {
    return new Fields()
        .put("symbol", unit.symbol())
        .put("scale", Rationals.text(unit.scale()))
        .put("offset", Rationals.text(unit.offset()));
  }

  private void taking(Fields fields, Reading reading) {
    fields
        .putIfAny("how", reading.how())
        .putIfAny("where", reading.where())
        .putIfAny("phase", reading.phase())
        .putIfAny("instrument", reading.instrument())
        .putIfAny("accuracy", reading.accuracy().map(ReadingData::accuracy))
        .putIfAny("cautions", reading.cautions())
        .putIfAny("guide", reading.guide().map(kb.guides()::get).map(this::guide))
        .put("access", reading.access().word())
        .put("minutes", Rationals.text(reading.minutes()))
        .putIfAny(
            "setUp",
            reading.setUp().map(kb.setUps()::get).filter(Objects::nonNull).map(ReadingData::setUp));
  }

  private Fields guide(io.faultwright.model.Guide guide) {
    return new Fields()
        .put("title", guide.title())
        .put("href", SitePaths.file(new Target(Kind.GUIDE, guide.id())));
  }

  private static Fields setUp(SetUp setUp) {
    return new Fields()
        .put("id", setUp.id())
        .put("title", setUp.title())
        .put("minutes", Rationals.text(setUp.minutes()));
  }

  private static List<List<String>> accuracy(Accuracy accuracy) {
    return accuracy.parts().stream()
        .map(
            part ->
                part.match(
                    fixed -> List.of("fixed", Rationals.text(fixed.amount())),
                    reading -> List.of("reading", Rationals.text(reading.share())),
                    scale ->
                        List.of(
                            "scale", Rationals.text(scale.share()), Rationals.text(scale.end()))))
        .toList();
  }

  private Fields derived(Derived form) {
    return new Fields()
        .put(
            "terms",
            form.terms().entrySet().stream()
                .map(term -> List.of(term.getKey(), Rationals.text(term.getValue())))
                .toList())
        .put("bends", form.bends().stream().map(this::bend).toList())
        .put("constant", Rationals.text(form.constant()));
  }

  private Fields bend(Bend bend) {
    return new Fields()
        .put("factor", number(bend.factor()))
        .put("curve", curve(bend.curve()))
        .put("argument", derived(bend.argument()));
  }

  private static String number(BigFraction factor) {
    return Rationals.text(factor);
  }

  private static String curve(Curve curve) {
    if (curve instanceof Curve.OfSaturation saturation) {
      return saturation.line() == Line.BUBBLE ? "bubble" : "dew";
    }
    return CurveData.ALTITUDE;
  }
}
