package org.belthigh.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;

/** What a command left: its exit status, standard output and standard error. */
record Ran(int status, String out, String err) {
  JsonNode json() throws IOException {
    return new ObjectMapper().readTree(out);
  }
}
