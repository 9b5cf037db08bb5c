-- What a segment asks of planned elements: a line for each kind, as it was typed, and how many elements in all. It
-- warns and stops nobody; the record keeps every earlier list.
create table required_programme (
  segment_id uuid primary key references segment (id),
  version int not null,
  copied_from varchar(60) not null,
  asked varchar(1000) not null,
  least_elements int,
  most_elements int
);
