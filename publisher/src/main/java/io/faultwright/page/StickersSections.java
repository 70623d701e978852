package io.faultwright.page;

import io.faultwright.layout.QrSymbol;
import io.faultwright.model.Model;
import io.faultwright.page.StickersSection.Sticker;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** Labels with a code that opens the diagnosis of one model. */
final class StickersSections {
  /** Less is hard to read from a worn label (millimetres, without the quiet zone). */
  private static final double LEAST = 20;

  private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;

  private final Desk desk;
  private final String diagnosis;

  /**
   * @param base address under which the site will stand
   */
  StickersSections(Desk desk, String base) {
    this.desk = desk;
    this.diagnosis = base.replaceFirst("/+$", "") + "/diagnose.html";
  }

  StickersSection section() {
    List<Sticker> stickers =
        Alphabet.sorted(desk.kb().equipment().models().values(), Model::id).stream()
            .flatMap(model -> sticker(model).stream())
            .toList();
    return new StickersSection(stickers, diagnosis);
  }

  private Optional<Sticker> sticker(Model model) {
    String address = diagnosis + "?model=" + URLEncoder.encode(model.id(), StandardCharsets.UTF_8);
    return QrSymbol.of(address, LEAST)
        .map(
            code ->
                new Sticker(
                    model.id(), model.title(), code, code.box().width() / POINTS_PER_MILLIMETRE));
  }
}
