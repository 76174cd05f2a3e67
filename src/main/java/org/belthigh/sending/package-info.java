/**
 * What a plan sends on to other programs: calendars ({@link org.belthigh.sending.Calendars}) and
 * tables ({@link org.belthigh.sending.Spreadsheet}).
 */
package org.belthigh.sending;
