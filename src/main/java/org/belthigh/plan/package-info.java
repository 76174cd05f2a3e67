/**
 * Decisions, calendar and limits become a {@link org.belthigh.plan.Plan} that carries every reason
 * and source it prints.
 */
package org.belthigh.plan;
