package io.faultwright.render.pdf;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;

/** Puts the handbook's own date in place of the clock's, and a file id that follows from it. */
final class Imprinting {
  private Imprinting() {}

  static void imprint(PDDocument document, String date) {
    PDDocumentInformation information = document.getDocumentInformation();
    Optional<Calendar> day = day(date);
    information.setCreationDate(day.orElse(null));
    information.setModificationDate(day.orElse(null));
    information.setProducer("Faultwright");
    document.setDocumentId(day.map(Calendar::getTimeInMillis).orElse(0L));
  }

  private static Optional<Calendar> day(String date) {
    try {
      return Optional.of(
          GregorianCalendar.from(LocalDate.parse(date).atStartOfDay(ZoneOffset.UTC)));
    } catch (DateTimeParseException undated) {
      return Optional.empty();
    }
  }
}
