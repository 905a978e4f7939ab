/** Tells what a page says about the shop, the parcel, the price and other goods from what it says about the part. Reads no value. */

const ofTheShop =
  /shipping|versand|livraison|exp[eé]di|env[ií]o|spedizione|wysyłk|in stock|auf lager|reviews?\b|return|[€$£]|\bsku\b|% off|warranty|garant|\bworking days|werktag|measure error/i;

/** What a sentence says about itself, the parcel and the price. */
export const isShopTalk = (sentence: string): boolean => ofTheShop.test(sentence);

const others =
  /^(?:you (?:may|might) (?:also|like)|related|similar|(?:other )?customers|also bought|recently viewed|other (?:sizes|versions|variants|options|colours|colors)|andere (?:groessen|grossen|varianten)|weitere (?:grossen|varianten)|autres (?:tailles|versions|capacites)|otros? (?:tamanos|modelos|versiones)|altre (?:misure|versioni|capacita)|altri (?:formati|modelli)|outros? (?:tamanhos|modelos)|inne (?:rozmiary|wersje|pojemnosci)|dalsi (?:varianty|velikosti)|andere (?:maten|uitvoeringen)|also (?:on|available)|zuletzt (?:angesehen|gesehen)|vus recemment|vistos recientemente|visti di recente|ostatnio ogladane|polecamy|doporucujeme|people also|frequently bought|recommended (?:products|accessories|for you)|accessories|goes well with|(?:kunden|andere) kauften|(?:passendes? (?:zubehor|produkte|artikel)|wird oft|ahnliche|zubehor$|dazu passt)|produits? (?:similaires|associes|connexes|lies)|vous aimerez|les clients|accessoires|productos? (?:relacionados|similares)|tambien te|los clientes|te puede|accesorios|prodotti (?:correlati|simili)|potrebbe|potrebbero|chi ha (?:acquistato|comprato)|accessori|produtos relacionados|voce tambem|gerelateerd|anderen kochten|klanten|vaak samen|produkty (?:powiazane|podobne)|podobne produkty|zobacz (?:tez|takze)|klienci|akcesoria|souvisejici|podobne|mohlo by|zakaznici|reviews?|customer reviews?|ratings?|questions?|q ?& ?a|faq|bewertungen|kundenbewertungen|fragen|avis|opiniones|valoraciones|recensioni|opinie|hodnoceni|recenze|beoordelingen|kommentare|comments?|commentaires|comentarios|commenti)(?: [^:]{0,30})?$/;

/** A heading under which other goods stand, or what buyers wrote. */
export const opensOthers = (heading: string): boolean => heading.length < 48 && others.test(heading);

const own =
  /spec|technical|technisch|technique|tecnic|dane|parametr|features?|merkmale|eigenschaften|caracter|caratter|cechy|description|beschreibung|descripcion|descrizione|opis|popis|details|daten|donnees|scheda|ficha|fiche/;

/** A heading that comes back to the part. */
export const opensOwn = (heading: string): boolean => heading.length < 48 && own.test(heading);
