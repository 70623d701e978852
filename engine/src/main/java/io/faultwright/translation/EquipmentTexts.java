package io.faultwright.translation;

import static io.faultwright.translation.Reworded.each;

import io.faultwright.model.Equipment;
import io.faultwright.model.Family;
import io.faultwright.model.Model;
import io.faultwright.model.Nameplate;
import io.faultwright.model.Option;
import io.faultwright.quantity.Refrigerant;
import io.faultwright.quantity.Refrigerants;
import io.faultwright.source.Place;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** The equipment in other words. */
final class EquipmentTexts {
  private final Reword reword;
  private final NameplateLabels labels;

  EquipmentTexts(Reword reword, NameplateLabels labels) {
    this.reword = reword;
    this.labels = labels;
  }

  /** What nobody wrote is in no language. */
  Equipment of(Equipment old) {
    return old.models().containsKey(Equipment.IMPLICIT) ? old : written(old);
  }

  private Equipment written(Equipment old) {
    Optional<Place> place = old.models().values().stream().map(Model::place).findFirst();
    return new Equipment(
        each(old.families(), this::family),
        each(old.options(), this::option),
        each(old.models(), this::model),
        old.nameplate().map(plate -> place.map(near -> nameplate(plate, near)).orElse(plate)),
        place.map(near -> refrigerants(old, near)).orElse(old.refrigerants()));
  }

  private Family family(Family old) {
    return new Family(
        old.id(),
        old.place(),
        reword.text(old.title(), old.place()),
        reword.text(old.about(), old.place()));
  }

  private Option option(Option old) {
    return new Option(
        old.id(),
        old.place(),
        reword.text(old.title(), old.place()),
        reword.values(old.values(), old.place()));
  }

  private Model model(Model old) {
    SortedMap<String, String> data = new TreeMap<>();
    old.data()
        .forEach(
            (label, text) -> data.put(labels.reworded(label), reword.figure(text, old.place())));
    return new Model(
        old.id(),
        old.place(),
        old.title().equals(old.id()) ? old.title() : reword.figure(old.title(), old.place()),
        old.family(),
        old.options(),
        old.software(),
        old.refrigerant(),
        data);
  }

  private Nameplate nameplate(Nameplate old, Place place) {
    return new Nameplate(
        reword.text(old.where(), place), reword.text(old.software(), place), old.segments());
  }

  private SortedMap<String, Refrigerant> refrigerants(Equipment old, Place place) {
    return each(old.refrigerants(), one -> isPublished(one) ? one : refrigerant(one, place));
  }

  /** Sources of the built-in lines are titles of publications. */
  private static boolean isPublished(Refrigerant refrigerant) {
    return Refrigerants.find(refrigerant.id())
        .filter(known -> known.source().equals(refrigerant.source()))
        .isPresent();
  }

  private Refrigerant refrigerant(Refrigerant old, Place place) {
    return new Refrigerant(
        old.id(), old.safety(), old.bubble(), old.dew(), reword.text(old.source(), place));
  }
}
