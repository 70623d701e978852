package io.faultwright.model;

import io.faultwright.source.Place;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

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
  public Model {
    options = Sorted.copy(options);
    software = List.copyOf(software);
    data = Sorted.copy(data);
  }
}
