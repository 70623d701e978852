package io.faultwright.page;

import java.util.List;

/**
 * Pressure and temperature of a refrigerant at saturation.
 *
 * @param anchor id of its element
 * @param title as printed
 * @param self its own page
 * @param cautions before everything
 * @param facts safety class, models, where the figures hold and come from
 * @param glides whether bubble and dew differ
 * @param tables one for each system of units
 * @param readings what is computed with it
 */
public record RefrigerantSection(
    String anchor,
    String title,
    Link self,
    List<CautionPanel> cautions,
    List<Fact> facts,
    boolean glides,
    List<Table> tables,
    List<Link> readings)
    implements Content {
  /**
   * The figures in one system of units.
   *
   * @param temperature unit of the first column
   * @param gauge unit of gauge pressures, at sea level
   * @param absolute unit of absolute pressures
   * @param difference unit of the glide
   * @param rows temperature; bubble as gauge and absolute; where it glides, dew likewise and glide
   * @param altitude what a gauge shows higher up
   */
  public record Table(
      String temperature,
      String gauge,
      String absolute,
      String difference,
      List<List<String>> rows,
      String altitude) {}
}
