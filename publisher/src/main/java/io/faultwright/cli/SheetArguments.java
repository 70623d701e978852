package io.faultwright.cli;

import io.faultwright.diagnostic.Unreadable;
import io.faultwright.output.Refused;
import io.faultwright.sheet.SheetFile;
import io.faultwright.sheet.SheetFormat;
import java.nio.file.Path;

/** The files that {@code export} and {@code import} are given. */
final class SheetArguments {
  private SheetArguments() {}

  /**
   * What the ending of a file says.
   *
   * @throws Refused where it says nothing
   */
  static SheetFormat format(Path file) {
    return SheetFormat.of(file.toString())
        .orElseThrow(
            () ->
                new Refused(
                    "`" + file + "` is neither .xlsx nor .csv",
                    "give a file name with one of these endings; spreadsheet programs save both"));
  }

  /**
   * The sheets of a file.
   *
   * @throws Unreadable where it is not there, or not what its ending says
   */
  static SheetFile read(Path file, SheetFormat format) {
    String name = file.toString().replace('\\', '/');
    return SheetFile.read(name, InputFile.bytes(file), format);
  }
}
