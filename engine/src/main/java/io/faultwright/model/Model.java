package io.faultwright.model;

import io.faultwright.source.Place;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * A published model.
 *
 * @param id model number, as on the nameplate
 * @param place where it stands
 * @param title as printed
 * @param family id of its family
 * @param options the value of every option
 * @param software published versions of its controller, oldest first; empty without a controller
 * @param refrigerant id of the refrigerant in its circuit, where that is said
 * @param data further nameplate data as printed (charge, supply), by label
 */
public record Model(
    String id,
    Place place,
    String title,
    String family,
    SortedMap<String, String> options,
    List<Version> software,
    Optional<String> refrigerant,
    SortedMap<String, String> data) {
  /** The label under which the nameplate says the refrigerant. */
  public static final String REFRIGERANT = "refrigerant";

  public Model {
    options = Sorted.copy(options);
    software = List.copyOf(software);
    data = Sorted.copy(data);
  }

  /** What the nameplate says under a label: the refrigerant, or a line of the data. */
  public Optional<String> nameplate(String label) {
    return label.equals(REFRIGERANT) && refrigerant.isPresent()
        ? refrigerant
        : Optional.ofNullable(data.get(label));
  }

  /** Every label under which the nameplate says something. */
  public SortedSet<String> labels() {
    SortedSet<String> labels = new TreeSet<>(data.keySet());
    refrigerant.ifPresent(known -> labels.add(REFRIGERANT));
    return labels;
  }
}
