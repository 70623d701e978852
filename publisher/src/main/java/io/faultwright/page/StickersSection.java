package io.faultwright.page;

import io.faultwright.layout.QrSymbol;
import java.util.List;

/**
 * Labels to print and stick beside nameplates.
 *
 * @param stickers one for each model
 * @param address under which the diagnosis will stand, for people without a camera
 */
public record StickersSection(List<Sticker> stickers, String address) implements Content {
  /**
   * The label of a model.
   *
   * @param model its number
   * @param title as printed
   * @param code the address of its diagnosis
   * @param width of the code with its quiet zone, in millimetres
   */
  public record Sticker(String model, String title, QrSymbol code, double width) {}
}
