package io.faultwright.page;

import java.util.List;
import java.util.Optional;

/**
 * What the handbook is about.
 *
 * @param nameplate how a model number is read
 * @param families product families
 * @param options features in which models differ
 * @param columns headings of the table of models after model and family
 * @param models every published model
 */
public record EquipmentSection(
    Optional<NameplateSection> nameplate,
    List<Item> families,
    List<OptionItem> options,
    List<String> columns,
    List<ModelRow> models)
    implements Content {
  /** A family. */
  public record Item(String anchor, String title, String about, List<Link> symptoms) {}

  /** An option with its values. */
  public record OptionItem(String anchor, String title, List<String> values) {}

  /**
   * A published model.
   *
   * @param cells family, the value of every option and the software, one for each heading
   * @param data further nameplate data
   */
  public record ModelRow(
      String anchor, String id, String title, List<String> cells, List<Fact> data) {}
}
