package org.fettlebench.threads;

import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/**
 * The thread series that are enabled now, and threads by their designation. What a module adds or
 * takes away shows at the next call.
 */
@ProviderType
public interface Threads {
  /** Returns all series: the suite's own first, then those of modules. */
  List<ThreadSeries> series();

  /**
   * Finds a thread by any usual way of writing it: {@code 2BA}, {@code 2 B.A.}, {@code No 2 BA},
   * {@code M6}, {@code m6 x 1}, {@code M6x0.75-6g}, {@code 1/4-20 UNC-2B}, {@code #10-32}, {@code
   * 10-32 UNF}, {@code 3/16 Whit}, {@code 1/4" BSF}, {@code 1/4 x 40 ME}, {@code G1/8}; and a
   * club's series by its id, aliases and designation. Capitals, spaces, dots, inch marks and the
   * class of thread (6g, 2B) do not matter.
   *
   * <p>What could mean several threads is settled so, or not at all:
   *
   * <ul>
   *   <li>without a series, {@code 1/4-20} (dash) is Unified before others, {@code 1/4 x 20} is the
   *       first in the order of {@link #series};
   *   <li>a bare whole size is inches before it is a number: {@code 1 UNC} is one inch, {@code #1
   *       UNC} is number 1; {@code 10-32} can only be number 10;
   *   <li>a size that fits several threads of one series, such as {@code 3/8 ME} or {@code M8
   *       fine}, is not found: {@link #near} lists them;
   *   <li>a thread that no series lists is made by rule where the designation says form, diameter
   *       and pitch: UN (with 4, 6, 8, 12, 16, 20, 28 or 32 threads per inch), UNS, M with a pitch
   *       of the general plan, Whit, BA form (in millimetres): {@code 15/16-12 UN}, {@code .300-24
   *       UNS}, {@code M13x1}, {@code 1/4 x 36 Whit}, {@code 4.7 x 0.81 BA form};
   *   <li>a left hand or a length behind it is not dropped: such a text is not found here, {@link
   *       #read} tells both;
   *   <li>of two series that write a thread alike, the first in the order of {@link #series}.
   * </ul>
   */
  Optional<ScrewThread> find(String designation);

  /**
   * Finds a thread as {@link #find} does and keeps the class written behind it, in the standard's
   * own writing: {@code M6 - 6G} gives {@code 6G}, {@code 1/4-20unc-2b} gives {@code 2B}, {@code
   * 1/4 BSW Medium} gives {@code medium}. Only in metric classes do capitals matter. A hand ({@code
   * LH}, {@code left hand}) and the length of a screw ({@code M6 x 20}, {@code 2 BA x 1/2}) are
   * told with it; a length is one from half the diameter to a hundred diameters, in inches where
   * the thread counts in inches or is BA, unless it names its unit.
   */
  default Optional<ThreadCall> read(String designation) {
    return find(designation).map(thread -> new ThreadCall(thread, Optional.empty()));
  }

  /**
   * Returns threads that may have been meant, closest first: by the letters to change in the
   * designation, then by closeness of diameter. Empty when nothing comes close.
   *
   * @param most how many at most, 0 or more
   * @throws IllegalArgumentException if {@code most} is negative
   */
  List<ScrewThread> near(String designation, int most);

  /**
   * Returns what to say of a designation of a kind that the trade knows and no series carries, such
   * as a taper pipe thread ({@code R 1/4}), {@code NPT}, {@code MJ}, {@code UNJF}, {@code Tr}, or
   * of a thread with something behind it that is no class ({@code M6-9z}); empty for all others.
   * Asked where {@link #find} finds nothing, before near misses are told.
   */
  default Optional<String> refusal(String designation) {
    return Optional.empty();
  }
}
