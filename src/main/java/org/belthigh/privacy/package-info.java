/**
 * What is known of one child, taken out of a club folder ({@link org.belthigh.privacy.Forgetting})
 * or made unknowable for showing a club to others ({@link org.belthigh.privacy.Redaction}).
 */
package org.belthigh.privacy;
