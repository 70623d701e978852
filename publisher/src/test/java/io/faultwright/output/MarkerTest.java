package io.faultwright.output;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MarkerTest {
  @TempDir Path temp;

  /** A kill at any moment of it leaves a folder that the next run may clear away. */
  @Test
  void theListIsDeletedAfterAllThatItNames() throws IOException {
    for (int deleted = 0; deleted <= 6; deleted++) {
      Path folder = Files.createDirectories(temp.resolve("folder"));
      Files.createDirectories(folder.resolve("sub"));
      Marker.start(folder);
      for (String file : List.of(AtomicArchive.FROZEN, "index.html", "sub/a.txt")) {
        Marker.add(folder, file);
        Files.writeString(folder.resolve(file), file);
      }
      for (Path path : Marker.inOrder(folder).subList(0, deleted)) {
        Files.delete(path);
      }
      if (Files.exists(folder)) {
        assertEquals(List.of(), List.copyOf(Marker.strangers(folder)), "deleted " + deleted);
        Marker.deletePublished(folder);
      }
      assertEquals(false, Files.exists(folder));
    }
  }
}
