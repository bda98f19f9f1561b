package org.fettlebench.desktop.widgets;

/**
 * The usual cautions, short and in full, in one place so that they say the same everywhere.
 *
 * @param brief one line
 * @param full what stands behind it
 */
public record Cautions(String brief, String full) {
  /** For drilling, tapping and work on castings. */
  public static final Cautions DRILLING =
      new Cautions(
          "Guards on, work clamped, eyes covered, chuck key out.",
          "Clamp the work: a casting that turns with the drill breaks fingers. Wear eye protection;"
              + " swarf and scale fly. Take the chuck key out before the switch is touched. A"
              + " broken tap is glass-sharp: draw it with a tool, and never put a finger in the"
              + " hole. Brush swarf away, never wipe it by hand or blow it.");

  /** For setting out and machining raw castings. Common practice, no source. */
  public static final Cautions CASTINGS =
      new Cautions(
          "Clamp on sound metal, eyes covered, go under the skin with the first cut.",
          "Pack what rocks before it is clamped, and take the chuck key out. The skin of a casting"
              + " is hard and sandy. Swarf of cast iron is dust: no compressed air, brush and"
              + " never fingers. Between the spots that were measured nothing is known: look for"
              + " hollows and sand before the last cut.");

  /** For anything that holds steam, air or water under pressure. */
  public static final Cautions PRESSURE =
      new Cautions(
          "Holds pressure: the approved design and the boiler inspector decide, not these figures.",
          "Threads, stays, bushes and fastenings of boilers and pressure parts follow the design as"
              + " approved, the rules of the club's boiler inspector and local law. The figures"
              + " shown here do not replace that examination. Do not change a fastening, a"
              + " thread or a thickness of such a part without the inspector's word.");
}
