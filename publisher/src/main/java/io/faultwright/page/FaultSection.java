package io.faultwright.page;

import java.util.List;
import java.util.Optional;

/**
 * A fault with its repair.
 *
 * @param anchor id of its element
 * @param title as printed
 * @param self its own page
 * @param about a sentence or two
 * @param applies equipment that can have it; empty for all
 * @param cautions before everything
 * @param nameplate figures of the nameplate that the repair needs, if any
 * @param remedy the repair, in order
 * @param verify how to see that it worked, in order
 * @param parts spare parts with their order numbers
 * @param guide the page that explains it
 * @param symptoms where it is concluded
 * @param courses where it is shown in time
 */
public record FaultSection(
    String anchor,
    String title,
    Link self,
    String about,
    List<Clause> applies,
    List<CautionPanel> cautions,
    Optional<Plate> nameplate,
    List<Step> remedy,
    List<Step> verify,
    List<Fact> parts,
    Optional<Link> guide,
    List<Link> symptoms,
    List<Link> courses)
    implements Content {
  /**
   * Figures of the nameplate.
   *
   * @param columns labels of the figures
   * @param rows models with equal figures together, in the written order
   */
  public record Plate(List<String> columns, List<PlateRow> rows) {}

  /**
   * Models that have the same figures.
   *
   * @param models their numbers
   * @param cells one for each column
   */
  public record PlateRow(List<String> models, List<String> cells) {}
}
