package org.belthigh.audit;

import java.util.Optional;
import java.util.SortedSet;

/** The prints that lie beside a plan. */
public interface Papers {
  /** Paths of all PDFs, relative to the folder of the plan, with forward slashes. */
  SortedSet<String> paths();

  /** What stands in that file; empty where it is not there or cannot be read. */
  Optional<byte[]> bytes(String path);
}
