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
 * @param dataColumns labels of further nameplate data
 * @param data further nameplate data of the models that have any, one cell for each label
 * @param stickers labels with a code for the nameplate; absent where the site's address is not
 *     known
 */
public record EquipmentSection(
    Optional<NameplateSection> nameplate,
    List<Item> families,
    List<OptionItem> options,
    List<String> columns,
    List<ModelRow> models,
    List<String> dataColumns,
    List<ModelRow> data,
    Optional<Link> stickers)
    implements Content {
  /** A family. */
  public record Item(String anchor, String title, String about) {}

  /** An option with its values. */
  public record OptionItem(String anchor, String title, List<String> values) {}

  /**
   * A published model.
   *
   * @param cells one for each heading after the model itself
   */
  public record ModelRow(String anchor, String id, String title, List<String> cells) {}
}
