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
      return parts.stream().mapToDouble(Placement::width).sum() + BETWEEN * (parts.size() - 1);
    }

    double height() {
      return parts.stream().mapToDouble(Placement::height).max().orElse(0);
    }
  }

  /** The parts in their places on the page, if they fit. */
  Optional<List<Placement>> packed(List<Placement> parts) {
    List<Row> rows = rows(parts);
    double height = rows.stream().mapToDouble(Row::height).sum() + BETWEEN * (rows.size() - 1);
    boolean fits =
        height <= room.height() && rows.stream().allMatch(row -> row.width() <= room.width());
    return fits ? Optional.of(placed(rows)) : Optional.empty();
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
