package io.faultwright.output;

import java.io.IOException;
import java.nio.file.Path;

/** Gives a file or folder another name in the same folder. */
interface Renaming {
  void rename(Path from, Path to) throws IOException;
}
