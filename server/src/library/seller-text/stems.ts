/** What a word on a seller's page is about, told by the stem of the word in the languages sellers write; the one place to add a stem. Knows no field. */
import { fold } from './text';

/**
 * Small letters without accents. A stem begins a word; `-` before it: it may also end a compound (`-gewicht`);
 * `.` behind it: the word ends there; `_` is a space, a hyphen or nothing.
 */
export const words = {
  weight:
    'weigh wt. mass. -gewicht -masse. wieg weegt poids pese. pesent peso. pesa. pesan. pesando massa. masa. waga. wagi. waze. wazy. wazac hmotnost vaha. vazi. tips_the_scales scales. bilancia. bascula. balance_de_cuisine',
  size: 'dimension dim. dims. size. sizes. measur -abmess -masse. -mass. -grosse -misst mesur taille encombr medida mide. miden. tamano dimens misur ingombr wymiar rozmiar mierz rozmer velikost afmeting maat. maten. formaat. footprint outline pcb.',
  length:
    'length long. -lange. -lang. longueur longitud largo. lunghezz lungo. lunga. lunghi compriment lengte dlug delk. delka dlouh end_to_end de_long',
  overall: 'overall end_to_end',
  width:
    'width wide. -breit largeur large. anchura ancho. larghezz largo. larga. largura breedte breed. szerok sirk sirok',
  height:
    'height high. tall. -hohe. -hoch. hauteur haut. altura alto. altezz alta. hoogte hoog. wysok vysk vysok clearance',
  thickness: 'thick -dick -starke. epaiss grosor espesor grueso spess spesor dikte. dik. grub tloust tlust',
  diameter: 'diam dia. -durchmesser ø φ ⌀ srednic prumer doorsnede',
  depth: 'depth deep. -tief profond profund diept diep. glebok hloub',
  hole: 'hole -loch lochbild -bohrung bohrbild trou percage perce. alesage agujero taladr orificio foro. fori. foratura furo furacao gat. gaten. otwor dira. diry. otvor bore. bores. asgat',
  pattern:
    'pattern spacing -abstand -bild. -raster -kreis. entraxe patron separaci interass rozstaw roztec padrao distanc distanz -afstand patroon grid. pitch_of_holes espacement schemat schema',
  mount:
    'mount fix. fixa fixing befestig -befestigung -aufnahme. montag montaj montaz montaggio montage einbau install mocow uchyc upevn bevestig fissagg attacc sujecion anclaj bolt footprint adattament',
  motor: 'motor motors motoren -motor moteur motore motori silnik',
  stack:
    'stack fc. flight_control flugsteuer electronic elektronik controller. pila. torre. stos. controladora controleur_de_vol',
  middle: 'mitte. mittel center centre middle main. haupt central centro medio. medi. srodk stred',
  free: 'lichte. clear. clearance free. inner. inside. innen -innen libre interior interieur intern. interne intern utile. swiatlo wewn vnitr svetl',
  together:
    'with. mit. avec. con. incl inkl includ compris comprend total overall gesamt -gesamt whole calosc calkow celk complet razem samt met. w/ vc.',
  rear: 'rear back. aft. heck hint arriere traser posterior tyl. tylny tylne zadni achter traseir',
  vtx: 'vtx. vtx video_transmitter videosender sender. emetteur emisor trasmettitore nadajnik vysilac',
  wire: 'wire wires wiring cable cables -kabel kabel lead. leads. litze fil. fils. cavo. cavi. cavetti fios. fio. draad draden przewod kabl vodic silicone. silikon pigtail awg. anschlussdrah zuleitung cavetto -draht',
  gauge: 'awg gauge section. querschnitt -querschnitt seccion sezione przekroj prurez bitola doorsnede',
  current:
    'current amp. amps. amper amperage -strom. -strom -stroms. courant intensit intensidad corriente corrente stroom prad. pradu proud. proudu i_max -stroom. proudov',
  draw: 'draw pulls. sips consum -verbrauch zieht ziehen consomm assorb verbruik pobor pobier zuzyc odber spotreb drain. gasto appetite stromaufnahm leistungsaufnahm',
  continuous:
    'continu cont. con_current constant -dauer permanent nominal rated. rating. nenn ciagl ciagly trval sustain constante costante stale. dauerhaft',
  most: 'max. max maxim maks -hochst limit. grenz ceiling tope. absolu absolut up_to bis_zu jusqu hasta fino_a nejvys najw no_more_than at_most massim',
  burst:
    'burst peak. peaks. -spitze -spitzen spitz kurzzeit pointe. pico. picco. moment instant rafaga rafale szczyt chwil spick impuls short_time pulse pulso impulsion puls krotkotr kratkodob piek kurz.',
  idle: 'idle no_load zero_load without_load leerlauf a_vide en_vide vacio. vuoto. jalow bez_obciazenia naprazdno nullast onbelast ralenti sin_carga sem_carga senza_carico repos. io. i0. unloaded stationair vazio. reposo riposo',
  voltage: 'volt -spannung tension. tensione tensioni tensao napiec napet spanning voltaj voltaggio',
  input: 'input eingang -eingang entree entrada ingresso wejsc vstup ingang invoer feed feeds',
  supply:
    'supply power. powers powered betrieb -versorgung aliment zasil napaj napajen voeding takes. accepts. accept working operating service. fonctionn funcionamiento trabajo lavoro pracy robocz funzionamento anything_from supplies runs_on run_from',
  cells:
    'cell cells. zelle zellen -zellen -zellig lipo. lipos. li-po cellule celda celle. cella. ogniw clank cel. cellen akku batter bateri pack. accu. accus packs. element zell',
  resistance: 'resist -widerstand weerstand rezyst opor. odpor rm. ri. milliohm impedan',
  power: 'power. powers watt watts -leistung puissance potenc potenz moc. mocy. vermogen vykon wattage',
  steep: 'screw_pitch pitch. pitched steig -steigung pas. paso. passo. skok. skoku stoup spoed. stoupani',
  blade:
    'leaf leaves blade blades bladed -blatt -blattrig pale. pales. -pale. palas. pala. tripale tripala bipale bipala lopat list. listu. listy bladen -bladen -blad. triblade bladig pas. -lopat',
  hub: 'hub. hubs. -nabe. -naben nabe naben moyeu buje. cubo. mozzo naaf piast naboj nucleo',
  shaft:
    'shaft -welle. -wellen welle. wellen arbre axe. eje. ejes. albero eixo. wal. walu. waly os. osi. osie hridel axle. axel walek walka schaft',
  screw:
    'screw schraub -schraube vis. visser visserie tornill vite. viti. parafus schroef sroub srub wkret bout. bouten bolt',
  nut: 'nut. nuts. mutter ecrou tuerca dado. porca moer. nakret matic',
  thread: 'thread gewinde filet rosca filettat gwint zavit',
  stator: 'stator estator statore stojan',
  bell: 'bell. -glocke cloche campana dzwon zvon klok. can.',
  magnet: 'magnet aimant iman. imanes',
  capacity: 'kapazit -kapazitat pojemn kapacit capacity capacite capacita. capacidad capaciteit capacitance',
  discharge:
    'discharg entlad -entlad decharg descarg scaric rozlad vybij vybijeni ontlad c-rat c_rat c_rating c_value c-wert',
  charge:
    'charg. charge charges. charging lade. laden ladestrom laderate ladung recharg charge_ rechar carga. recarga cargar carica. ricaric ladow nabij nabijeni laad laden. oplad carregamento',
  balance: 'balanc -balancer equilibr bilanc wyrown servisn ekvilib balans',
  connector:
    'connector connexion connecteur plug. plugs -stecker stecker anschluss -anschluss prise. fiche. conector conect connett spina. presa zlacz wtyk wtycz gniazd konekt socket. sockets -buchse buchse jack. stekker connettore enchufe ficha. terminat interface interfaz zakoncz coax koaxial steckverbind',
  chemistry: 'chemi quimic chimi technolog',
  sort: 'typ. type. tipo. rodzaj. style. art.',
  energy: 'energ watt_hour wattstunden',
  antenna: 'antenn anten. antena antenas antenow antenov aerial. aerials anten',
  frequency:
    'khz. frequen frekven frecuen czestotl band. bands. bande. banda bandas. pasm pasmo -band. tuned bereich -bereich kmitoc',
  gain: 'gain. gewinn -gewinn ganancia guadagno ganho zysk zisk winst',
  axial: 'axial axiale achsverh osiow osov assial elliptic',
  polar: 'polaris polariz polaryz polarity',
  swr: 'vswr. swr. s11. return_loss tos. ros. stehwelle',
  channel: 'channel kanal -kanal canal canaux canales canali kanaal',
  pit: 'pit. pit_mode pitmode pit-modus pitmodus',
  control: 'control steuer comando sterow ovlad protocol protokol protocollo command. commande aanstur',
  telemetry: 'telemet',
  sensitivity: 'sensitiv -empfindlich empfindlich sensibil czulos citlivos gevoelig',
  link: 'link. radio_link liaison enlace collegamento lacze funk. funksystem funkstandard radio_system protocol_family lacza',
  firmware: 'firmware fw. firmwar logiciel',
  uart: 'uart uarts serial_port puerto_serie puertos_serie seriell port_serie ports_serie porte_seriali porty_szereg',
  bec: 'bec. becs. bec regulator rail. rails. przetwornic stabilizator wandler -wandler spannungsregler converter menic convertisseur convertidor',
  output: 'output outputs -ausgang ausgang sortie sorties salida uscit wyjsc vystup uitgang saida',
  osd: 'osd. osd overlay incrustation superposi sovrimpress sobreimpres -einblendung at7456 max7456',
  memory:
    'flash. dataflash memory. blackbox black_box speicher -speicher memoire memoria pamiec pamet geheugen log. logs. logging logger enregistr sd-card sdcard',
  baro: 'baro. baromet',
  compass: 'compass magnetomet kompass kompas boussole brujula bussola compas',
  gyro: 'gyro imu. kreisel giroscop accelero',
  i2c: 'i2c iic. sda. scl.',
  led: 'led. leds.',
  led_strip:
    'ws2812 led_strip led-streifen bande_led ruban_led tira_led tira_de_led striscia_led pasek_led tasma_led led_pad led-pad led-anschluss',
  buzzer: 'buzzer buzz. beeper piepser -piepser piezo summer. zumbador cicalin brzecz bzuc zoemer pieper. bipeur buzer',
  usb: 'usb usb-c type-c. type_c. tipo_c. typ-c.',
  pads: 'pad. pads. lotpad -pad. pastill lotflach piazzol -pads. lotpads',
  camera: 'cam. cams. camera kamera camara telecamera -kamera cameras fpv-kamera kamery',
  standoff:
    'standoff stand-off spacer -abstandshalter abstandhalter abstandsbolzen entretois colonn separador distanzial distanzbolzen dystans distanc. sloupk torretta torrette espaciador pilares afstandshouder afstandsbus espacador',
  arm: 'arm. arms. arme. armen. bras. brazo bracc ramion ramie ramien ramena rameno braco ersatzarm ramen. armst armbr armd arml',
  plate: 'plate plates -platte platte plaque placa placas piastr plyt deska desky desk. bodem bottom_plate top_plate',
  prop: 'prop. props. paddle propell -propeller helice elica eliche elik smigl smiglo vrtul schroef. luftschraube',
  wheelbase:
    'wheelbase wheel_base radstand achsabstand motor_to_motor motor-to-motor diagonal empattement entre_ejes interasse distancia_entre_ejes passo. rozstaw_osi rozvor wielbasis distancia_entre_eixos rozstaw_silnik distancia_entre_motor distance_entre_moteurs distanza_tra_motori distanza_tra_i_motori distanza_motori abstand_der_motoren motorabstand odleglosc_silnik vzdalenost_motor',
  strap:
    'strap straps -gurt. -gurtschlitz gurt gurtschlitz klett velcro sangle correa cinghi pasek. paska paski popruh riem. -band_slot klettband cinta pask',
  material: 'material materia -werkstoff werkstoff matiere tworzyw materiaal',
  geometry: 'geometr layout bauform uklad form. forme. forma. tvar',
  pieces:
    'piece pcs. pc. quantity qty stuck -stuck anzahl quantite unidad pieza cantidad pezz quantit sztuk szt. ilosc stuks. aantal kus. kusu ks. per_pack set_of pack_of sachet bag_of bolsa busta woreczek zakje beutel baleni',
  rotation:
    'rotat -drehrichtung drehsinn sens_de_rotation kierun smer_otac draairichting obrot cw. ccw. rotac rotaz clockwise counter-clockwise counterclockwise horaire uhrzeiger',
  grommet:
    'grommet gummi -tulle silentbloc gommin amortig rubber damper shock_ball soft_mount soft-mount silent_bloc antivibr gumk tlumik silikonkugel softmount borrach tlumic',
  capacitor: 'capacitor kondensator condensat condensad elko. elco. elcos cap. caps. kondenz',
  leg: 'leg. legs. -bein -beinchen beinchen -draht. -drahte patte. pattes. patill terminal terminali. reofor nozk nozic nozick pootje pin_length vyvod wyprowadzen nozek patas',
  esr: 'esr.',
  sensor: 'sensor senseur capteur czujnik senzor sensore galvanomet stromsensor cidlo',
  lens: 'lens. lente. linse objekt objectif obiettivo objetivo obiektyw -objektiv',
  fov: 'fov. field_of_view bildwinkel blickwinkel angle_de champ. sichtfeld',
  ratio:
    'aspect ratio. seitenverhalt rapport relacion proporc proporz aspekt beeldverhouding pomer format. formato bildformat screen. image',
  standard:
    'standard. standart norm. norme. norma system. systeme sistema tv. pal. ntsc. signal segnale senal videonorm fernsehnorm',
  resolution: 'resol tvl. auflos rozdziel rozlis',
  scale: 'scale. skala echelle escala faktor -skalierung scala meritk',
  gps: 'gps. gnss. gps-',
  duct: 'duct. ducts carenage -duct',
  frame: 'frame. frames. rahmen -rahmen chassis telaio rama. ramy. ram. marco. cuadro kader',
  hardware: 'hardware. fixings kleinteile visserie',
  between: 'between_the zwischen_den entre_les entre_las entre_placas entre_as tra_le miedzy mezi_des tussen_de',
  side: 'side. seitlich cote. lado. lato. strona kant. seite.',
  bay: 'bay. einbauraum',
  pair: 'pair -paar. -paare. paire pares coppi. coppie pary.',
  status: 'status stan. etat. estado. stato.',
  both_ways: 'bidirec bidirek bidirez dwukierun obousm tweericht rpm_filter',
  small_class: 'micro. nano. mini. full-size full_size',
  esc: 'esc. escs. regler speed_controller variateur variador',
  digital: 'digital. hd. digitale numerique',
  box: 'package -karton karton carton verpackung versand shipping shipment packing packag parcel emballage embalaje imballo opakow balik expedi envio spedizion wysylk verzend verpakking gross. brutto brut. bruto. lordo. of_the_box with_box box_size gift_box retail_box of_the_bag colis pacco paquete paczk zasilk sendung pakket',
  advice:
    'recommend suggest empfehl empfohl conseil recomand recomend consigli zalec doporuc aanbevol aanbevel passend compatible kompatibel compatib kompatybil suited ideal matching pairs_well geeignet suitable passt_zu',
  thrust: 'thrust schub -schub poussee empuje spinta ciag. trakce stuwkracht tah. draagkracht throttle efficien g/w',
  flown:
    'takeoff take-off take_off auw. flying_weight fluggewicht abfluggewicht all-up en_ordre_de_vol decollage despegue decollo startgewicht startow vzlet',
  temperature: 'temperat temp. °c working_temp storage_temp',
  least:
    'below. lower_than not_under. minim abschalt entladeschluss cut-off cutoff inferieur unter. unterhalb sotto ponizej pod. debajo abaixo onder. descendre_sous',
  measuring: 'sense sensing mesure_de misura_della medicion medicao pomiar meren meting spannungsmess',
  time: 'delivery lieferzeit livraison entrega consegna dostaw doruc',
  goggle: 'goggle brille lunettes gafas occhiali gogli bryle',
  radio_module: 'radio. handset remote_controller',
  variant:
    'also_available available_as available_with auch_erhalt erhaltlich disponibile_anche anche_con aussi_disponible existe_aussi tambien_disponible disponible_en rowniez dostepna_tez take_v ook_verkrijg verkrijgbaar optionally also_in auch_in aussi_en tambien_en anche_in rowniez_w takze_w also. auch. aussi. tambien. anche. takze',
  supplied:
    'included supplied comes_with delivered_with enthalten beiliegend mitgeliefert fourni inclus incluid incluso inclusa inclusi w_zestawie dolaczon soucasti bijgeleverd meegeleverd goes_with v_baleni w_komplecie nella_confezione in_dotazione in_the_box na_caixa im_lieferumfang dans_la_boite en_la_caja in_the_bag',
  stored: 'storage stored lager -lager almacen immagazz stockage przechow skladov opslag conservar bewaren',
  other_thing:
    'bearing kugellager lager. roulement rodamiento cuscinett rolament lozysk lozisk fuse. sicherung fusible fusibil bezpiecznik pojistk zekering charger ladegerat chargeur cargador caricabatter ladowark nabijeck oplader adapter adaptador adaptateur adattator redukc spike smoke_stopper tester action_cam',
  need: 'need requires required benotigt necesita richiede wymaga vyzaduje vereist',
  receiver: 'receiver -empfanger empfanger recepteur receptor ricevent ricevitor odbiornik prijimac ontvanger',
  bracket: 'bracket -halter. -halterung halterung soporte staffa uchwyt drzak beugel',
  heat_shrink: 'heat_shrink heatshrink schrumpf thermoretr termorretract termoret krimp',
  without:
    'without ohne. sans. sin. senza. bez. zonder. sem. w/o excl exkl hors. not. no. none. kein keine nicht. pas_de non. nie. niet. geen. optional separat',
} as const;

export type About = keyof typeof words;

const compiled: readonly (readonly [About, RegExp])[] = Object.entries(words).map(([about, list]) => [
  about as About,
  new RegExp([...new Set(list.split(/\s+/))].map(patternOf).join('|')),
]);

function patternOf(stem: string): string {
  const inner = /^-?(.*?)\.?$/
    .exec(stem)![1]!
    .replace(/[.*+?^${}()|[\]\\/]/g, '\\$&')
    .replaceAll('_', '[ -]?');
  return `${stem.startsWith('-') ? '' : '(?<![a-z0-9])'}${inner}${stem.endsWith('.') ? '(?![a-z0-9])' : ''}`;
}

/** @returns what the words of a label or a clause are about */
export function aboutOf(text: string): ReadonlySet<About> {
  const folded = fold(text);
  return new Set(compiled.flatMap(([about, pattern]) => (pattern.test(folded) ? [about] : [])));
}
