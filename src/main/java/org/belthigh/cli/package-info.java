/** The commands: parse, call the stages, print, exit status. The only room that sees a clock. */
package org.belthigh.cli;
