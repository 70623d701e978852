package io.faultwright.site;

import java.nio.file.Path;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class ViewTest {
  @Test
  void view() throws Exception {
    new SitePublisher()
        .publish(
            SampleBook.plain(),
            new TreeMap<>(),
            Options.release(true),
            Path.of("/tmp/site-view/out"));
  }
}
