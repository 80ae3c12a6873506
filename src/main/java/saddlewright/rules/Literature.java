package saddlewright.rules;

/** The works that rules and thresholds cite, each written once. */
public final class Literature {
  /** Several sets of British undergraduate revision cards that agree with each other. */
  public static final String BRITISH_NOTES =
      "British undergraduate teaching notes on partial denture design (several sets)";

  public static final String BASE_SLIDES = "teaching slides on the bases of partial dentures";
  public static final String DENTAL_STUDY_NOTES =
      "postgraduate dental study notes on frameworks, agreeing with McCracken";
  public static final String AMERICAN_CARDS = "North American teaching cards (several sets)";
  public static final String STATIC_ANALYSIS =
      "static analysis of free-end dentures, teaching pages with the lever law";
  public static final String APPLEGATE = "Applegate's rules, from several sets of teaching notes";
  public static final String OVERDENTURE_NOTES = "teaching notes on overdentures";
  public static final String CREUGERS =
      "Creugers et al. 2010 on shortened dental arches, Int J Dent";
  public static final String BDJ_CONNECTORS =
      "Davenport et al., Connectors, Br Dent J 2001;190 (10.1038/sj.bdj.4800919)";
  public static final String SIMPLICITY = "Sivach and Mattoo 2014 on the simplicity of frameworks";
  public static final String MAZURAT = "Mazurat, J Can Dent Assoc 2000;66:428-430";
  public static final String REST_NOTES = "student notes on rests and their seats";
  public static final String DAYA = "Daya and Owen, S Afr Dent J 2022;77(8)";
  public static final String BDJ_SERIES =
      "Davenport, Basker, Heath, Ralph and Glantz, Removable partial dentures, Br Dent J 2000-2001";
  public static final String BDJ_CLASPS = "Davenport et al., Clasp design, Br Dent J 2001;190 no 2";
  public static final String BDJ_INDIRECT =
      "Davenport et al., Indirect retention, Br Dent J 2001;190";
  public static final String BDJ_PREPARATION =
      "teaching slides drawn from Davenport et al., Tooth preparation, Br Dent J 2001;190";
  public static final String OKLAHOMA =
      "University of Oklahoma, removable partial denture review questions";
  public static final String ANKARA = "Ankara University, textbook of removable partial dentures";
  public static final String DALHOUSIE = "Dalhousie University, RPD manual";
  public static final String WESTERN_AUSTRALIA =
      "University of Western Australia, lecture notes on partial denture design";
  public static final String STRATTON =
      "Stratton and Wiebelt, Atlas of Removable Partial Denture Design, 1988, as quoted by a"
          + " laboratory";
  public static final String STEWART_NOTES =
      "student notes of Stewart's Clinical Removable Partial Prosthodontics";
  public static final String MCCRACKEN_NOTES =
      "teaching notes of McCracken's Removable Partial Prosthodontics";
  public static final String ELIASON = "Eliason, J Prosthet Dent 1983;49";
  public static final String KROL = "Krol 1973 on the RPI clasp";
  public static final String NEURONS =
      "teaching notes on the requirements of a clasp unit, agreeing with McCracken";
  public static final String EXAM_NOTES = "North American board examination notes";

  public static final String OWALL =
      "Öwall, Budtz-Jörgensen et al., Removable partial denture design: a need to focus on hygienic"
          + " principles, Int J Prosthodont 2002;15:371-378";

  public static final String BDJ_BRACING =
      "Davenport et al., Bracing and reciprocation, Br Dent J 2001;190:10-14";
  public static final String FARAONE = "Faraone, tutorial on the design of Kennedy Class I";
  public static final String MOUTH_PREPARATION = "teaching notes on mouth preparation";
  public static final String NISSER =
      "Nisser et al. on root-filled abutments, a follow-up study of lost teeth";
  public static final String INDIRECT_SLIDES =
      "teaching slides and study notes on indirect retention (several sets)";

  // Connectors and gingival hygiene.
  public static final String NORTH_AMERICAN_CARDS =
      "North American teaching cards on major connectors";
  public static final String MAXILLARY_NOTES =
      "teaching notes on maxillary major connectors (several sets)";
  public static final String MANDIBULAR_NOTES =
      "teaching notes on mandibular major connectors (several sets)";
  public static final String BEN_UR =
      "Ben-Ur et al., J Prosthet Dent 1989;62:557-562 and 1999;81:526-532";
  public static final String ORR = "Orr, Linden and Newman, J Clin Periodontol 1992;19:589-594";
  public static final String RADFORD = "Radford and Walter, Int J Prosthodont 1993;6:50-54";
  public static final String RADNAI = "Radnai et al. on the choice of lingual bar or plate";

  // Mouth preparations and the order of treatment.
  public static final String PREMOLAR_SEATS =
      "Occlusal rest seat depth in bicuspids, Rev Odonto Ciênc";
  public static final String ABUTMENT_PREPARATION =
      "McCracken's Removable Partial Prosthodontics, preparation of abutment teeth";
  public static final String REST_SEATS =
      "McCracken's Removable Partial Prosthodontics, rests and rest seats; teaching slides on rests";
  public static final String PREPARATION_SLIDES =
      "teaching slides on mouth preparation, 2017; a lecture on mouth preparations";
  public static final String IMMEDIATE_DENTURES =
      "Jogezai, Laverty and Walmsley, Immediate dentures part 2, Dental Update 2018;45:720-726";
  public static final String BEZZON = "Bezzon et al., Braz Dent J 1997;8:55-60";
  public static final String DASTEVSKI = "Dastevski et al., OAMJMS 2018;6:1120-1125";
  public static final String REST_MANUAL =
      "Removable partial dentures, a practitioners' manual, chapter on rests (Springer)";
  public static final String GUIDE_PLANE_CARDS = "teaching cards on guiding planes";
  public static final String STAGE_GUIDES =
      "student guides to the stages of partial denture treatment (three schools)";
  public static final String SCHOOL_PROTOCOL =
      "a school's step-by-step protocol for partial dentures";
  public static final String CLINIC_STANDARD =
      "a university clinic's standard for partial denture prescriptions";

  private Literature() {}
}
