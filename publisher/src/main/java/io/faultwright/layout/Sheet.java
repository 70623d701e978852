package io.faultwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Packs the parts of one page: side by side while there is room, then in a further row. */
final class Sheet {
  private static final double BETWEEN = 24;

  private final Box room;

  Sheet(Box room) {
    this.room = room;
  }

  /** Parts beside one another. */
  private record Row(List<Placement> parts) {
    double width() {
      double width = BETWEEN * (parts.size() - 1);
      for (Placement part : parts) {
        width += part.width();
      }
      return width;
    }

    double height() {
      return parts.stream().mapToDouble(Placement::height).max().orElse(0);
    }
  }

  /** The parts in their places on the page, if they fit. */
  Optional<List<Placement>> packed(List<Placement> parts) {
    List<Row> rows = rows(parts);
    return hold(rows) ? Optional.of(placed(rows)) : Optional.empty();
  }

  /** Whether the parts fit on the page. */
  boolean holds(List<Placement> parts) {
    return hold(rows(parts));
  }

  private boolean hold(List<Row> rows) {
    double height = BETWEEN * (rows.size() - 1);
    for (Row row : rows) {
      height += row.height();
    }
    return height <= room.height() && rows.stream().allMatch(row -> row.width() <= room.width());
  }

  private List<Row> rows(List<Placement> parts) {
    List<Row> rows = new ArrayList<>();
    List<Placement> open = new ArrayList<>();
    for (Placement part : parts) {
      open.add(part);
      if (new Row(open).width() > room.width() && open.size() > 1) {
        rows.add(new Row(List.copyOf(open.subList(0, open.size() - 1))));
        open = new ArrayList<>(List.of(part));
      }
    }
    rows.add(new Row(List.copyOf(open)));
    return rows;
  }

  private List<Placement> placed(List<Row> rows) {
    List<Placement> placed = new ArrayList<>();
    double y = room.y();
    for (Row row : rows) {
      double x = Grid.half(room.x() + (room.width() - row.width()) / 2);
      for (Placement part : row.parts()) {
        placed.add(part.shifted(x, Grid.half(y)));
        x += part.width() + BETWEEN;
      }
      y += row.height() + BETWEEN;
    }
    return placed;
  }
}
