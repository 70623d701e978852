package io.faultwright.measure;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalLong;

/** How much memory a process took at most, in megabytes. */
final class Memory {
  private Memory() {}

  /** Starts to count this process's heap anew. */
  static void reset() {
    System.gc();
    ManagementFactory.getMemoryPoolMXBeans().forEach(MemoryPoolMXBean::resetPeakUsage);
  }

  /** Peaks of the heap's parts since the reset, garbage included; an upper bound. */
  static long peakHeap() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(pool -> pool.getType() == MemoryType.HEAP)
            .mapToLong(pool -> pool.getPeakUsage().getUsed())
            .sum()
        >> 20;
  }

  /** What Linux says about a process: its resident memory at most so far. */
  static OptionalLong peakResident(long pid) {
    try {
      return Files.readAllLines(Path.of("/proc/" + pid + "/status")).stream()
          .filter(line -> line.startsWith("VmHWM:"))
          .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")) >> 10)
          .findFirst();
    } catch (IOException gone) {
      return OptionalLong.empty();
    }
  }
}
