package org.belthigh.handout.kit;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * Title, language and date of a document, written the same way into the information dictionary and
 * the XMP packet. The date is midnight (UTC) of the day that the print is made for: no clock.
 */
record Metadata(String title, Locale language, LocalDate day) {
  static final String PRODUCER = "Belthigh";

  String infoDate() {
    return "D:" + DateTimeFormatter.BASIC_ISO_DATE.format(day) + "000000+00'00'";
  }

  /** The XMP packet, with the schema that PDF/A asks for before {@code pdfuaid} may be used. */
  byte[] xmp() {
    return XMP.replace("{title}", escaped(title))
        .replace("{language}", language.toLanguageTag())
        .replace("{date}", day + "T00:00:00+00:00")
        .replace("{producer}", PRODUCER)
        .getBytes(StandardCharsets.UTF_8);
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  private static final String XMP =
      """
      <?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>
      <x:xmpmeta xmlns:x="adobe:ns:meta/">
       <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
        <rdf:Description rdf:about=""
          xmlns:dc="http://purl.org/dc/elements/1.1/"
          xmlns:xmp="http://ns.adobe.com/xap/1.0/"
          xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
          xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"
          xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"
          xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
          xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
          xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
         <dc:title><rdf:Alt><rdf:li xml:lang="x-default">{title}</rdf:li></rdf:Alt></dc:title>
         <dc:language><rdf:Bag><rdf:li>{language}</rdf:li></rdf:Bag></dc:language>
         <xmp:CreateDate>{date}</xmp:CreateDate>
         <xmp:ModifyDate>{date}</xmp:ModifyDate>
         <xmp:CreatorTool>{producer}</xmp:CreatorTool>
         <pdf:Producer>{producer}</pdf:Producer>
         <pdfaid:part>2</pdfaid:part>
         <pdfaid:conformance>A</pdfaid:conformance>
         <pdfuaid:part>1</pdfuaid:part>
         <pdfaExtension:schemas>
          <rdf:Bag>
           <rdf:li rdf:parseType="Resource">
            <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
            <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
            <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
            <pdfaSchema:property>
             <rdf:Seq>
              <rdf:li rdf:parseType="Resource">
               <pdfaProperty:name>part</pdfaProperty:name>
               <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
               <pdfaProperty:category>internal</pdfaProperty:category>
               <pdfaProperty:description>Part of ISO 14289 followed</pdfaProperty:description>
              </rdf:li>
             </rdf:Seq>
            </pdfaSchema:property>
           </rdf:li>
          </rdf:Bag>
         </pdfaExtension:schemas>
        </rdf:Description>
       </rdf:RDF>
      </x:xmpmeta>
      <?xpacket end="w"?>
      """;
}
