package org.fettlebench.kits.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fettlebench.fits.Outline;
import org.fettlebench.fits.Seat;
import org.fettlebench.fits.SeatException;
import org.fettlebench.fits.SeatQuestion;
import org.fettlebench.fits.SeatedHead;
import org.fettlebench.fits.Seats;
import org.fettlebench.fits.StationOutline;
import org.fettlebench.fits.StationOutline.Station;
import org.fettlebench.measure.Length;
import org.fettlebench.measure.Point;

/** Reads the geometry of a seat. */
final class SeatReader {
  /** Any small head will do to find out whether the seat itself can be. */
  private static final SeatedHead PROBE =
      new SeatedHead(
          "probe", 1, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), "");

  private final Seats seats;

  SeatReader(Seats seats) {
    this.seats = seats;
  }

  Optional<Seat> read(Section section) {
    int before = section.reading().faults().size();
    String name = section.requiredName("name", "Write name = \"cover land\"").orElse("");
    Optional<Outline> outline = outline(section, "outline", "stations");
    if (!section.has("outline") && !section.has("stations")) {
      section
          .reading()
          .faults()
          .addMissing(
              section.at(),
              section.title() + " has neither outline nor stations",
              "Give the corners as outline, or measured widths as stations");
    }
    Optional<Outline> underside = outline(section, "underside", "underside-stations");
    List<Seat.Wall> walls =
        section.tables("wall").stream().map(this::wall).flatMap(Optional::stream).toList();
    List<Seat.Neighbour> neighbours =
        section.tables("neighbour").stream()
            .map(this::neighbour)
            .flatMap(Optional::stream)
            .toList();
    List<Outline> cavities = new OutlineReader(section, "cavities").readAll();
    section.required("centre", "Write where the hole should be: centre = [\"9 mm\", \"4 mm\"]");
    Optional<Point> centre = Points.point(section, "centre");
    double leastMetal = section.notNegative("least-metal").map(Length::millimetres).orElse(0.0);
    section.done();
    if (section.reading().faults().size() > before || centre.isEmpty() || outline.isEmpty()) {
      return Optional.empty();
    }
    return checked(
        section,
        new Seat(
            name, outline.get(), underside, walls, cavities, neighbours, centre.get(), leastMetal));
  }

  private Optional<Seat> checked(Section section, Seat seat) {
    try {
      seats.check(new SeatQuestion(seat, PROBE, 0.5, 0.1, "probe"));
      return Optional.of(seat);
    } catch (SeatException refused) {
      String[] said = refused.getMessage().split("; ", 2);
      section
          .reading()
          .faults()
          .add(
              section.at(keyOf(section, said[0])),
              seat.name(),
              "cannot be a seat: " + said[0],
              said.length > 1 ? said[1] : "List the corners in order round the flat");
      return Optional.empty();
    }
  }

  /** Returns the key of what the check complains of. */
  private static String keyOf(Section section, String wrong) {
    if (wrong.startsWith("hollow")) {
      return "cavities";
    }
    String face = wrong.startsWith("underside") ? "underside" : "outline";
    return section.has(face) ? face : face.equals("outline") ? "stations" : "underside-stations";
  }

  private Optional<Outline> outline(Section section, String corners, String stations) {
    if (section.has(corners) && section.has(stations)) {
      section.fault(stations, "is given besides " + corners, "Give one of the two");
      return Optional.empty();
    }
    return section.has(stations)
        ? stations(section, stations)
        : new OutlineReader(section, corners).read();
  }

  private Optional<Outline> stations(Section section, String key) {
    List<Section> rows = section.tables(key);
    List<Station> stations = rows(rows);
    if (stations.size() < rows.size()) {
      return Optional.empty();
    }
    try {
      return Optional.of(Outline.of(StationOutline.of(stations)));
    } catch (SeatException refused) {
      String[] said = refused.getMessage().split("; ", 2);
      section.fault(
          key, "cannot be an outline: " + said[0], said.length > 1 ? said[1] : "Measure again");
      return Optional.empty();
    }
  }

  /** Returns the stations of a seat that was read without a fault; none if it has corners. */
  static List<Station> stations(Section section) {
    return rows(section.tables("stations"));
  }

  private static List<Station> rows(List<Section> rows) {
    List<Station> stations = new ArrayList<>();
    for (Section row : rows) {
      String remedy = "Write { at = \"0 mm\", near = \"4 mm\", far = \"4 mm\" }";
      row.required("at", remedy);
      row.required("near", remedy);
      row.required("far", remedy);
      Optional<Length> at = row.length("at");
      Optional<Length> near = row.length("near");
      Optional<Length> far = row.length("far");
      row.done();
      if (at.isPresent() && near.isPresent() && far.isPresent()) {
        stations.add(
            new Station(at.get().millimetres(), near.get().millimetres(), far.get().millimetres()));
      }
    }
    return stations;
  }

  private Optional<Seat.Wall> wall(Section wall) {
    Optional<String> name = wall.requiredName("name", "Write name = \"cylinder wall\"");
    wall.required("from", "Write one end of its foot: from = [\"0 mm\", \"0 mm\"]");
    wall.required("to", "Write the other end of its foot: to = [\"9 mm\", \"0 mm\"]");
    Optional<Point> from = Points.point(wall, "from");
    Optional<Point> to = Points.point(wall, "to");
    Optional<Length> height = wall.requiredPositive("height", "Write height = \"6 mm\"");
    double fillet = wall.notNegative("fillet").map(Length::millimetres).orElse(0.0);
    wall.done();
    if (from.isPresent() && from.equals(to)) {
      wall.fault("to", "is the same place as from", "Give the two ends of the wall's foot");
    }
    return name.isPresent() && from.isPresent() && to.isPresent() && height.isPresent()
        ? Optional.of(
            new Seat.Wall(name.get(), from.get(), to.get(), height.get().millimetres(), fillet))
        : Optional.empty();
  }

  private Optional<Seat.Neighbour> neighbour(Section head) {
    Optional<String> name = head.requiredName("name", "Write name = \"oiler\"");
    head.required("centre", "Write centre = [\"9 mm\", \"4 mm\"]");
    Optional<Point> centre = Points.point(head, "centre");
    Optional<Length> sweep =
        head.requiredPositive("sweep", "Write the diameter it sweeps: sweep = \"9 mm\"");
    OptionalDouble height = SeatFileReader.optional(head.positive("height"));
    head.done();
    return name.isPresent() && centre.isPresent() && sweep.isPresent()
        ? Optional.of(
            new Seat.Neighbour(name.get(), centre.get(), sweep.get().millimetres() / 2, height))
        : Optional.empty();
  }
}
