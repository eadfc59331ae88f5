import { words } from '../../../core/words'

/** What the window says about heat. */
export const say = {
  heat: words('Heat', 'Wärme'),
  dewAndMould: words('Dew and mould line', 'Tau- und Schimmellinie'),
  temperature: words('Temperature, °C', 'Temperatur, °C'),
  band: words('1 K a band', '1 K je Stufe'),
  alongInside: words('Along the inner surface, °C', 'Entlang der inneren Oberfläche, °C'),
  alongWhat: words('wall, reveal, frame, glass', 'Wand, Leibung, Rahmen, Glas'),
  updating: words('updating', 'wird erneuert'),
  resistances: words('R_si, R_se', 'R_si, R_se'),
  resistancesBecause: words(
    'resistances of the surface criterion: on wall, reveal and sill; on frame and glass {0}',
    'Widerstände des Oberflächenkriteriums: an Wand, Leibung und Fensterbank; an Rahmen und Glas {0}',
  ),
  coldest: words('Coldest point of the reveal', 'Kälteste Stelle der Leibung'),
  coldestAt: words('coldest point, on the {0}', 'kälteste Stelle, {0}'),
  factor: words('factor f_Rsi', 'Faktor f_Rsi'),
  howSure: words('How sure', 'Wie sicher'),
  fromMesh: words('Temperature, from the mesh', 'Temperatur, aus dem Netz'),
  flowFromMesh: words('Heat flow, from the mesh', 'Wärmestrom, aus dem Netz'),
  fromAssumed: words('From assumed inputs', 'Aus angenommenen Werten'),
  casesPassed: words('Published cases passed', 'Veröffentlichte Fälle bestanden'),
  outOf: words('{0} of {0}', '{0} von {0}'),
  movesMost: words('What moves it most', 'Was es am meisten bewegt'),
  per: words('per {0}', 'je {0}'),
  heatLoss: words('Linear heat loss', 'Linearer Wärmeverlust'),
  throughCut: words('Through the cut', 'Durch den Schnitt'),
  wallTerm: words('Wall {0} × {1} m', 'Wand {0} × {1} m'),
  windowTerm: words('Window {0} × {1} m', 'Fenster {0} × {1} m'),
  psi: words('Ψ, outer sizes', 'Ψ, Außenmaße'),
  noPsiOnGround: words(
    'The ground takes part, so there is no Ψ. From inside {0} W/m, from the ground {1} W/m.',
    'Das Erdreich wirkt mit, also gibt es kein Ψ. Von innen {0} W/m, aus dem Erdreich {1} W/m.',
  ),
  working: words('working', 'wird gerechnet'),
  notSolved: words('The heat of this cut is not solved', 'Die Wärme dieses Schnitts ist nicht gerechnet'),
  fault: words(
    'Heat broke. Your drawing is not touched.',
    'Die Wärme ist ausgefallen. Die Zeichnung ist unberührt.',
  ),
  tryAgain: words('Try again', 'Noch einmal'),
  showFields: words('Fields', 'Felder'),
  vapour: words('Vapour', 'Dampf'),
  noWetZone: words(
    'No water gathers in winter, an estimate',
    'Im Winter fällt kein Tauwasser an, eine Abschätzung',
  ),
  wetZoneUnknown: words(
    'Where water gathers is not known: what is missing stands under Vapour',
    'Wo Tauwasser anfällt, ist unbekannt: was fehlt, steht unter Dampf',
  ),
  wetZone: words('Water in winter', 'Tauwasser im Winter'),
  besideLead: words(
    'The frame at up to four places of its wall, from its bearing layer, at one scale, one band a degree.',
    'Der Rahmen an bis zu vier Stellen der Wand, ab tragender Schicht, in einem Maßstab, eine Stufe je Grad.',
  ),
  besideFilms: words(
    'Fields and Ψ with R_si {0}; the coldest place and its verdict with those of the surface criterion.',
    'Felder und Ψ mit R_si {0}; die kälteste Stelle und ihr Befund mit denen des Oberflächenkriteriums.',
  ),
  asNow: words('as it is now', 'wie jetzt'),
  takePosition: words('Take this place', 'Diese Lage nehmen'),
  coldestShort: words('coldest', 'kälteste Stelle'),
  pressures: words('Pressures through the joint, Pa', 'Drücke durch die Fuge, Pa'),
  saturated: words('saturated', 'gesättigt'),
  present: words('present', 'vorhanden'),
  overSd: words(' of the planes, as its root', ' der Ebenen, als Wurzel'),
  yearOfWater: words('Water in a year, kg/m²', 'Tauwasser im Jahr, kg/m²'),
  gathersDries: words('gathers, dries', 'fällt an, trocknet'),
  lies: words('lies there', 'liegt dort'),
  noWater: words('No water gathers in any month.', 'In keinem Monat fällt Tauwasser an.'),
  comparePositions: words('Compare positions', 'Lagen vergleichen'),
} as const

/** Values of the winter, outside first, by names as short as the column of heat is narrow. */
export const shortNames = [
  { field: 'site.outside-temperature', name: words('Outside', 'Außen') },
  { field: 'site.outside-humidity', name: words('Humidity outside', 'Feuchte außen') },
  { field: 'opening.inside-temperature', name: words('Inside', 'Innen') },
  { field: 'opening.inside-humidity', name: words('Humidity inside', 'Feuchte innen') },
] as const
