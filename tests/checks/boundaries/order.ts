/** Limits of prices, stock and days. */
import { edge } from './boundary';

const dearMotors = { 'shops.shops.tarn.offers.motor-a.0.price': '20.50' };

export const order = [
  // Four of 20.
  edge('below-minimum-order', 'shops.shops.pellam.minimum', ['80', 'silent'], ['80.01', 'error']),
  edge('budget-exceeded', 'budget', ['79.60 EUR', 'silent'], ['79.59 EUR', 'warning']),
  // Motors at 20.50 instead of 20 and a second parcel: 2 and what tarn takes for sending are saved, more than 3.
  edge('cheaper-split-exists', 'shops.shops.tarn.flat', ['1.00', 'silent'], ['1.01', 'information'], dearMotors),
  // With a frame of 240 the order is 327 and that parcel; 2 % are 6.63 and 6.6328.
  edge('cheaper-split-exists', 'shops.shops.tarn.flat', ['4.63', 'silent'], ['4.64', 'information'], {
    ...dearMotors,
    'shops.shops.pellam.offers.frame-a.0.price': '240',
  }),
  // What the other parcel costs against what is saved by its price.
  edge('cheapest-per-line-misleads', 'shops.shops.tarn.flat', ['2', 'silent'], ['2.01', 'information']),
  edge('just-below-free-shipping', 'shops.shops.pellam.free-over', ['80', 'silent'], ['80.01', 'information']),
  edge('just-below-free-shipping', 'shops.shops.pellam.free-over', ['86', 'silent'], ['85.99', 'information']),
  edge('lead-time-blocks', 'shops.shops.tarn.transit-days', ['9', 'silent'], ['10', 'information']),
  edge('line-out-of-stock', 'shops.shops.pellam.offers.motor-a.0.stock', ['4', 'silent'], ['3', 'error']),
  edge(
    'offer-stale',
    'shops.shops.pellam.offers.motor-a.0.seen',
    ['2026-11-06', 'silent'],
    ['2026-11-05', 'information'],
  ),
  edge(
    'offer-stale',
    'shops.shops.pellam.offers.motor-a.0.seen',
    ['2026-10-06', 'information'],
    ['2026-10-05', 'warning'],
  ),
  edge('pack-quantity-misread', 'parts.propellers.pieces', ['4', 'silent'], ['5', 'error']),
  // 8 and 15 % of 80.
  edge('shipping-share-high', 'shops.shops.pellam.flat', ['6.40', 'silent'], ['6.41', 'information']),
  edge('shipping-share-high', 'shops.shops.pellam.flat', ['12.00', 'information'], ['12.01', 'warning']),
  edge('spare-missing', 'parts.motors.spares', ['1', 'silent'], ['0', 'information']),
  // Four sets of four in all.
  edge('spare-missing', 'parts.propellers.spares', ['12', 'silent'], ['11', 'information'], {
    'parts.motors.spares': '1',
    'parts.propellers.count': '4',
    'parts.propellers.sold-as': 'prop-a',
  }),
  edge('single-source', 'shops.shops.pellam.offers.motor-a.0.price', ['20', 'silent'], [undefined, 'information']),
  // Gauges are told apart by whole numbers.
  edge('already-owned-unused', 'bench.tools.wires', ['13 AWG', 'silent'], ['12 AWG', 'information'], {
    'bench.tools.thread-lock': 'no',
  }),
  edge('too-many-parcels', 'goals.parcels', ['2', 'silent'], ['1', 'warning']),
];
