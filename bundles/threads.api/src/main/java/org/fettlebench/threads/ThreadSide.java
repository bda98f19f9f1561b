package org.fettlebench.threads;

/** Which of two mating threads is meant. */
public enum ThreadSide {
  /** Of a screw, bolt or stud. */
  EXTERNAL("screw"),
  /** Of a nut or tapped hole. */
  INTERNAL("nut");

  private final String word;

  ThreadSide(String word) {
    this.word = word;
  }

  /** Returns the word for it in the shop: {@code screw} or {@code nut}. */
  public String word() {
    return word;
  }
}
