-- How many at the end of an order were not drawn: they came after the draw and got the numbers that follow.
alter table starting_order add column added int default 0 not null;
