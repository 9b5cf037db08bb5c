-- Two rows of one club: which one a club turned out to be, and whose a team was before. An archive of one competition need
-- not have the other row, so neither refers to it.
alter table club add column section varchar(60) default '' not null;
alter table club add column merged_into uuid;
create index club_merged_into on club (merged_into);
alter table team add column merged_from uuid;
-- What counts of changes that a team had with the club it left and would not have with the one it came to.
alter table team add column carried int default 0 not null;
-- How a club is reached; it goes when the personal data of its competitions go.
create table club_contact (
  club_id uuid primary key references club (id),
  version int not null,
  mail varchar(120) not null,
  phone varchar(40) not null,
  salt varchar(64) not null
);
