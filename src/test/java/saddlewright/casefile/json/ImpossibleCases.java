package saddlewright.casefile.json;

import java.util.List;

/** Files that are cases by their first line and hold something that cannot be. */
final class ImpossibleCases {
  private ImpossibleCases() {}

  /**
   * One such file.
   *
   * @param what what is wrong
   * @param json the file
   * @param sentences what the program says of it, after the name of the file
   * @param schemaCanSay whether the published schema can express the fault
   */
  record Sample(String what, String json, String sentences, boolean schemaCanSay) {}

  static final String CORRECT = " Correct it and open the file again.";

  static final List<Sample> ALL =
      List.of(
          part(
              "a clasp on tooth 99",
              "{'id':'clasp-1','kind':'clasp','tooth':99,'form':'i-bar','tip':'mid-buccal',"
                  + "'origin':'mesial'}",
              ": lower › design › component \"clasp-1\" › tooth: 99 is not an FDI tooth number."
                  + " Use 31–38 or 41–48."),
          part(
              "a clasp of the other arch",
              "{'id':'clasp-1','kind':'clasp','tooth':14,'form':'i-bar','tip':'mid-buccal',"
                  + "'origin':'mesial'}",
              ": lower › design › component \"clasp-1\" › tooth: 14 is not a tooth of the lower"
                  + " arch. Use 31–38 or 41–48."),
          part(
              "half a tooth",
              "{'id':'stop-1','kind':'tissue-stop','tooth':36.5}",
              ": lower › design › component \"stop-1\" › tooth: expected a whole number, found"
                  + " 36.5."
                  + CORRECT),
          part(
              "an upper connector in the lower arch",
              "{'id':'m','kind':'major-connector','form':'palatal-strap','from':46,'to':36}",
              ": lower › design › component \"m\" › form: \"palatal-strap\" belongs to the upper"
                  + " arch. Give a form of the lower arch, or move the component to the other"
                  + " one."),
          part(
              "an unknown word",
              "{'id':'c','kind':'reciprocal-arm','tooth':36,'face':'outside','origin':'mesial'}",
              ": lower › design › component \"c\" › face: \"outside\" is not known here. Use one"
                  + " of buccal, lingual."),
          part(
              "a rest without a tooth",
              "{'id':'r','kind':'rest','site':'cingulum'}",
              ": lower › design › component \"r\": \"tooth\" is missing. Add it and open the file"
                  + " again."),
          part(
              "a component without an id",
              "{'kind':'backing','tooth':36}",
              ": lower › design › component no. 1: \"id\" is missing. Add it and open the file"
                  + " again."),
          part(
              "an id with a slash",
              "{'id':'a/b','kind':'backing','tooth':36}",
              ": lower › design › component no. 1: \"a/b\" is no component id; use letters,"
                  + " digits, hyphens, at most 64."
                  + CORRECT),
          part(
              "a component that is a number",
              "7",
              ": lower › design › component no. 1: expected an object in braces, found 7."
                  + CORRECT),
          part(
              "a negative relief",
              "{'id':'f','kind':'relief','area':'midline-raphe','thickness':-0.5}",
              ": lower › design › component \"f\": relief is -0.5 mm thick; it must be a number"
                  + " from 0 to 5."
                  + CORRECT),
          part(
              "a bar a metre high",
              "{'id':'m','kind':'major-connector','form':'lingual-bar','from':46,'to':36,"
                  + "'shape':{'height':1000}}",
              ": lower › design › component \"m\" › shape: connector height is 1000.0 mm; it must"
                  + " be a number from 0.5 to 40.0."
                  + CORRECT),
          part(
              "half a leader line",
              "{'id':'n','kind':'note','text':'x','x':0,'y':0,'pointsAtX':3}",
              ": lower › design › component \"n\": a leader line needs both coordinates or none."
                  + CORRECT),
          new Sample(
              "two components of one id",
              file(
                  "'lower':{'design':{'components':[{'id':'b','kind':'backing','tooth':36},"
                      + "{'id':'b','kind':'backing','tooth':37}]}}"),
              ": lower › design: two components share the id \"b\". Give one of them another id.",
              false),
          sample(
              "findings of tooth 99",
              "'upper':{'teeth':{'99':{'status':'missing'}}}",
              ": upper › tooth 99: 99 is not an FDI tooth number. Use 11–18 or 21–28."),
          sample(
              "findings of a tooth of the other arch",
              "'upper':{'teeth':{'36':{'status':'missing'}}}",
              ": upper › tooth 36: 36 is not a tooth of the upper arch. Use 11–18 or 21–28."),
          sample(
              "a tooth by another name",
              "'upper':{'teeth':{'016':{'status':'missing'}}}",
              ": upper › tooth 016: \"016\" is not an FDI tooth number. Use 11–18 or 21–28."),
          sample(
              "a crown of negative height",
              "'upper':{'teeth':{'16':{'crownHeight':-3}}}",
              ": upper › tooth 16: crown height is -3.0; it must be a number from 0 to 20."
                  + CORRECT),
          sample(
              "a number beyond all numbers",
              "'upper':{'teeth':{'16':{'crownHeight':1e999}}}",
              ": upper › tooth 16 › crownHeight: the number is absurdly large." + CORRECT),
          sample(
              "a mobility of 2.5",
              "'upper':{'teeth':{'16':{'mobility':2.5}}}",
              ": upper › tooth 16 › mobility: expected a whole number, found 2.5." + CORRECT),
          sample(
              "a number as text",
              "'upper':{'teeth':{'16':{'crownHeight':'7 mm'}}}",
              ": upper › tooth 16 › crownHeight: expected a number, found \"7 mm\"." + CORRECT),
          sample(
              "nothing where a word belongs",
              "'upper':{'teeth':{'16':{'status':null}}}",
              ": upper › tooth 16 › status: expected one of standing, missing, to-be-extracted,"
                  + " retained-root, implant, unerupted, found null."
                  + CORRECT),
          sample(
              "an undercut in no zone",
              "'upper':{'teeth':{'16':{'undercuts':{'palatal':{'depth':0.25}}}}}",
              ": upper › tooth 16 › undercuts: \"palatal\" is not known here. Use one of"
                  + " mesiobuccal, mid-buccal, distobuccal, mesiolingual, mid-lingual,"
                  + " distolingual."),
          sample(
              "an undercut of half a metre",
              "'upper':{'teeth':{'16':{'undercuts':{'mid-buccal':{'depth':500}}}}}",
              ": upper › tooth 16 › undercuts › mid-buccal: undercut depth is 500.0; it must be a"
                  + " number from 0 to 5."
                  + CORRECT),
          sample(
              "a sulcus of the other arch",
              "'upper':{'softTissues':{'lingualDepth':{'36':8}}}",
              ": upper › softTissues › lingualDepth › 36: 36 is not a tooth of the upper arch."
                  + " Use 11–18 or 21–28."),
          sample(
              "a frenum beside no tooth",
              "'upper':{'softTissues':{'frena':[19]}}",
              ": upper › softTissues › frena: 19 is not an FDI tooth number. Use 11–18 or 21–28."),
          sample(
              "a palate a kilometre deep",
              "'upper':{'softTissues':{'palateLimit':1000000}}",
              ": upper › softTissues: palate limit is 1000000.0; it must be a number from 20 to"
                  + " 80."
                  + CORRECT),
          sample(
              "an arch that is a list",
              "'upper':[]",
              ": upper: expected an object in braces, found []." + CORRECT),
          sample(
              "components that are no list",
              "'upper':{'design':{'components':{}}}",
              ": upper › design › components: expected a list in square brackets, found {}."
                  + CORRECT),
          sample(
              "a waiver without a reason",
              "'waivers':[{'finding':'k','reason':' ','role':'tutor','date':'2026-03-31'}]",
              ": waiver of \"k\": a waiver needs a reason." + CORRECT),
          sample(
              "a date of words",
              "'waivers':[{'finding':'k','reason':'r','role':'tutor','date':'today'}]",
              ": waiver of \"k\" › date: \"today\" is not a date. Write it as year-month-day,"
                  + " 2026-03-31."),
          sample(
              "a title that is a number",
              "'title':7",
              ": title: expected text in quotes, found 7." + CORRECT),
          new Sample(
              "no reference",
              "{\"format\":\"saddlewright-case\",\"formatVersion\":1}",
              ": \"reference\" is missing. Add it and open the file again.",
              true));

  private static Sample part(String what, String component, String sentences) {
    return sample(what, "'lower':{'design':{'components':[" + component + "]}}", sentences);
  }

  private static Sample sample(String what, String members, String sentences) {
    return new Sample(what, file(members), sentences, true);
  }

  /** A case with the given members; quotes may be single ones. */
  static String file(String members) {
    return ("{'format':'saddlewright-case','formatVersion':2,'reference':'R'," + members + "}")
        .replace('\'', '"');
  }
}
