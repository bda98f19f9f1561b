package org.fettlebench.kits.internal;

import java.util.Locale;
import java.util.stream.Collectors;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Spanner;
import org.fettlebench.fits.StationOutline.Station;
import org.fettlebench.kits.SeatFile;
import org.fettlebench.measure.LengthUnit;
import org.fettlebench.measure.Point;

/** Writes a seat file that reads back as the same seat, to the nanometre. */
final class SeatFileText extends TomlText {
  private SeatFileText(LengthUnit unit) {
    super(unit);
  }

  static String of(SeatFile file, LengthUnit unit) {
    SeatFileText text = new SeatFileText(unit);
    text.seat(file);
    text.head(file);
    text.hole(file);
    return text.written();
  }

  private void seat(SeatFile file) {
    Seat seat = file.question().seat();
    line("[seat]");
    key("name", quoted(seat.name()));
    if (file.stations().isEmpty()) {
      key("outline", outline(seat.outline()));
    } else {
      line("stations = [");
      file.stations().forEach(this::station);
      line("]");
    }
    seat.underside().ifPresent(below -> key("underside", outline(below)));
    if (!seat.cavities().isEmpty()) {
      key(
          "cavities",
          seat.cavities().stream().map(this::outline).collect(Collectors.joining(", ", "[", "]")));
    }
    key("centre", point(seat.intended()));
    if (seat.leastMetalMm() > 0) {
      key("least-metal", length(seat.leastMetalMm()));
    }
    seat.walls().forEach(this::wall);
    seat.neighbours().forEach(this::neighbour);
  }

  private void station(Station station) {
    line(
        "  { at = %s, near = %s, far = %s },"
            .formatted(
                length(station.alongMm()), length(station.nearMm()), length(station.farMm())));
  }

  private void wall(Seat.Wall wall) {
    line("");
    line("[[seat.wall]]");
    key("name", quoted(wall.name()));
    key("from", point(wall.from()));
    key("to", point(wall.to()));
    key("height", length(wall.heightMm()));
    if (wall.filletRadiusMm() > 0) {
      key("fillet", length(wall.filletRadiusMm()));
    }
  }

  private void neighbour(Seat.Neighbour other) {
    line("");
    line("[[seat.neighbour]]");
    key("name", quoted(other.name()));
    key("centre", point(other.centre()));
    key("sweep", length(2 * other.radiusMm()));
    other.heightMm().ifPresent(height -> key("height", length(height)));
  }

  private void head(SeatFile file) {
    SeatedHead head = file.question().head();
    line("");
    line("[head]");
    if (file.head().listed()) {
      key("thread", quoted(file.head().thread()));
      key("style", quoted(file.head().style()));
    } else {
      key("title", quoted(head.title()));
      head.acrossFlatsMm().ifPresent(flats -> key("across-flats", length(flats)));
      key("across-corners", length(head.sweepDiameterMm()));
      head.heightMm().ifPresent(height -> key("height", length(height)));
      head.bearingDiameterMm().ifPresent(face -> key("washer-face", length(face)));
    }
    head.washer().ifPresent(this::washer);
    head.spanner().ifPresent(this::spanner);
    head.flatsAlongDegrees().ifPresent(degrees -> key("flats-along-degrees", number(degrees)));
  }

  private void washer(SeatedHead.Washer washer) {
    key(
        "washer",
        "{ title = %s, diameter = %s, thickness = %s }"
            .formatted(
                quoted(washer.title()), length(washer.diameterMm()), length(washer.thicknessMm())));
  }

  private void spanner(Spanner spanner) {
    String height =
        spanner.heightMm().isPresent()
            ? ", height = " + length(spanner.heightMm().getAsDouble())
            : "";
    key(
        "spanner",
        "{ kind = %s, title = %s, diameter = %s%s, lift = %s, standing = %s }"
            .formatted(
                quoted(spanner.kind().name().toLowerCase(Locale.ROOT)),
                quoted(spanner.title()),
                length(spanner.headDiameterMm()),
                height,
                length(spanner.liftMm()),
                quoted(spanner.standing())));
  }

  private void hole(SeatFile file) {
    line("");
    line("[hole]");
    key("diameter", length(file.question().holeDiameterMm()));
    key("method", quoted(file.hole().method()));
    key("confidence", number(file.hole().confidence()));
    file.hole()
        .drilled()
        .ifPresent(
            drilled -> {
              key("drilled-at", point(drilled.centre()));
              key("drilled", length(drilled.diameterMm()));
              key("drilled-within", length(drilled.withinMm()));
            });
  }

  private String outline(Outline outline) {
    return outline.corners().stream().map(this::corner).collect(Collectors.joining(", ", "[", "]"));
  }

  private String corner(Outline.Corner corner) {
    if (corner.roundedMm() == 0 && corner.through().isEmpty()) {
      return point(corner.at());
    }
    return "{ at = "
        + point(corner.at())
        + (corner.roundedMm() > 0 ? ", rounded = " + length(corner.roundedMm()) : "")
        + corner.through().map(place -> ", through = " + point(place)).orElse("")
        + " }";
  }

  private String point(Point point) {
    return "[" + length(point.xMm()) + ", " + length(point.yMm()) + "]";
  }
}
